package org.holewise.school.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.holewise.school.account.Audit;
import org.holewise.school.account.Person;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The store's list, with how many there are of each. */
@Repository
class Items {

  private static final String SUBJECT = "item";

  private static final String SELECT =
      """
      select i.id, i.label, i.part_key, i.drawer, i.minimum, i.pack,
        coalesce(sum(case when m.to_place = 'STORE' then m.quantity
          when m.from_place = 'STORE' then -m.quantity else 0 end), 0) as in_store,
        coalesce(sum(case when m.to_place = 'CLASS' then m.quantity
          when m.from_place = 'CLASS' then -m.quantity else 0 end), 0) as with_classes
      from stock_items i left join stock_movements m on m.item = i.id
      """;

  private static final String GROUP =
      " group by i.id, i.label, i.part_key, i.drawer, i.minimum, i.pack order by i.label, i.id";

  private final JdbcClient db;
  private final Audit audit;
  private final Clock clock;

  Items(JdbcClient db, Audit audit, Clock clock) {
    this.db = db;
    this.audit = audit;
    this.clock = clock;
  }

  /** All items by their labels. */
  List<Level> all() {
    return db.sql(SELECT + GROUP).query(Items::level).list();
  }

  Optional<Level> find(long id) {
    return db.sql(SELECT + " where i.id = ?" + GROUP).param(id).query(Items::level).optional();
  }

  /** The item that is this part of exercises. */
  Optional<Level> being(PartKey part) {
    return db.sql(SELECT + " where i.part_key = ?" + GROUP)
        .param(part.text())
        .query(Items::level)
        .optional();
  }

  /** Adds an item, whatever its id says; a taken label or part is a DuplicateKeyException. */
  @Transactional
  Item add(Person by, Item item) {
    db.sql(
            """
            insert into stock_items (label, part_key, drawer, minimum, pack, made_at)
            values (?, ?, ?, ?, ?, ?)
            """)
        .param(item.label())
        .param(item.part().map(PartKey::text).orElse(null))
        .params(item.drawer(), item.minimum(), item.pack(), OffsetDateTime.now(clock))
        .update();
    long id =
        db.sql("select id from stock_items where label = ?")
            .param(item.label())
            .query(Long.class)
            .single();
    audit.note(by, "stock.added", SUBJECT, id);
    return find(id).orElseThrow().item();
  }

  /** Says anew what an item is; a taken label or part is a DuplicateKeyException. */
  @Transactional
  void change(Person by, Item item) {
    db.sql(
            """
            update stock_items set label = ?, part_key = ?, drawer = ?, minimum = ?, pack = ?
            where id = ?
            """)
        .param(item.label())
        .param(item.part().map(PartKey::text).orElse(null))
        .params(item.drawer(), item.minimum(), item.pack(), item.id())
        .update();
    audit.note(by, "stock.changed", SUBJECT, item.id());
  }

  /** Has everybody else who moves this item wait until the caller's transaction ends. */
  void lock(long id) {
    db.sql("select id from stock_items where id = ? for update").param(id).query(Long.class).list();
  }

  private static Level level(ResultSet row, int number) throws SQLException {
    return new Level(
        new Item(
            row.getLong("id"),
            row.getString("label"),
            Optional.ofNullable(row.getString("part_key")).map(PartKey::new),
            row.getString("drawer"),
            row.getInt("minimum"),
            row.getInt("pack")),
        row.getInt("in_store"),
        row.getInt("with_classes"));
  }
}
