package org.holewise.school.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.holewise.school.account.Instants;
import org.holewise.school.account.Person;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The ledger's rows. They are only ever added. */
@Repository
class Movements {

  private final JdbcClient db;
  private final Clock clock;

  Movements(JdbcClient db, Clock clock) {
    this.db = db;
    this.clock = clock;
  }

  /** The latest rows of an item before one, the latest first. */
  List<Movement> of(Item item, long before, int most) {
    return db.sql(
            """
            select * from (
              select m.id, m.from_place, m.to_place, m.quantity, m.lab_session, m.counters, m.note,
                m.made_at, p.name as made_by_name, g.name as group_name, s.planned_for,
                exists (select 1 from stock_movements c where c.counters = m.id) as countered,
                sum(case when m.to_place = 'STORE' then m.quantity
                  when m.from_place = 'STORE' then -m.quantity else 0 end)
                  over (order by m.id) as in_store
              from stock_movements m
              join people p on p.id = m.made_by
              left join lab_sessions s on s.id = m.lab_session
              left join class_groups g on g.id = s.class_group
              where m.item = ?
            ) as ledger
            where id < ? order by id desc fetch first ? rows only
            """)
        .params(item.id(), before, most)
        .query(Movements::movement)
        .list();
  }

  /** A row of an item. */
  Optional<Movement> find(Item item, long id) {
    return of(item, id + 1, 1).stream().filter(row -> row.id() == id).findFirst();
  }

  boolean have(String requestKey) {
    return db.sql("select count(*) from stock_movements where request_key = ?")
            .param(requestKey)
            .query(Integer.class)
            .single()
        > 0;
  }

  void add(Person by, Slip slip, Slip.Line line, @Nullable Long counters) {
    db.sql(
            """
            insert into stock_movements (item, quantity, from_place, to_place, lab_session,
              request_key, note, made_by, made_at, counters)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
            """)
        .params(line.item(), line.quantity(), line.from().name(), line.to().name())
        .param(slip.session().orElse(null))
        .params(slip.key(), slip.note(), by.id(), OffsetDateTime.now(clock))
        .param(counters)
        .update();
  }

  /** What these sessions have had, one row for each of them and each item. */
  List<Use> of(List<Long> sessions) {
    if (sessions.isEmpty()) {
      return List.of();
    }
    return db.sql(
            """
            select lab_session, item,
              sum(case when counters is null and from_place = 'STORE' then quantity
                when takes_back_packed then -quantity else 0 end) as packed,
              sum(case when to_place = 'CLASS' then quantity
                when from_place = 'CLASS' then -quantity else 0 end) as with_class,
              sum(case when to_place = 'USED' then quantity
                when from_place = 'USED' then -quantity else 0 end) as used_up,
              sum(case when to_place = 'BROKEN' then quantity
                when from_place = 'BROKEN' then -quantity else 0 end) as broken
            from (
              select m.*, exists (select 1 from stock_movements o
                where o.id = m.counters and o.from_place = 'STORE') as takes_back_packed
              from stock_movements m where m.lab_session in (:sessions)
            ) as moved
            group by lab_session, item
            """)
        .param("sessions", sessions)
        .query(Movements::use)
        .list();
  }

  private static Use use(ResultSet row, int number) throws SQLException {
    return new Use(
        row.getLong("lab_session"),
        row.getLong("item"),
        row.getInt("packed"),
        row.getInt("with_class"),
        row.getInt("used_up"),
        row.getInt("broken"));
  }

  private static Movement movement(ResultSet row, int number) throws SQLException {
    return new Movement(
        row.getLong("id"),
        Place.valueOf(row.getString("from_place")),
        Place.valueOf(row.getString("to_place")),
        row.getInt("quantity"),
        row.getInt("in_store"),
        session(row),
        row.getObject("counters") != null,
        row.getBoolean("countered"),
        row.getString("note"),
        row.getString("made_by_name"),
        Instants.of(row, "made_at"));
  }

  private static Optional<Movement.ForSession> session(ResultSet row) throws SQLException {
    return row.getObject("lab_session") == null
        ? Optional.empty()
        : Optional.of(
            new Movement.ForSession(
                row.getLong("lab_session"),
                row.getString("group_name"),
                row.getObject("planned_for", LocalDate.class)));
  }
}
