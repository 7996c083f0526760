package org.holewise.school.handin;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.holewise.school.account.Instants;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * The known causes of hand-ins. They are appended, each with the next number; of a hand-in the
 * latest of a teacher counts, and a repair's where no teacher said anything.
 */
@Repository
class Known {

  private final JdbcClient db;
  private final Clock clock;

  Known(JdbcClient db, Clock clock) {
    this.db = db;
    this.clock = clock;
  }

  /** The cause of a hand-in that counts. */
  Optional<Confirmation> of(long handIn) {
    return db.sql(
            """
            select c.kind, c.place, c.note, c.made_at, p.id, p.name, p.role
            from causes c left join people p on p.id = c.made_by where c.hand_in = ?
            order by case when c.source = 'TEACHER' then 0 else 1 end, c.number desc
            fetch first 1 row only
            """)
        .param(handIn)
        .query(Known::confirmation)
        .optional();
  }

  /** Lets nobody else append until the transaction ends: numbers become visible in their order. */
  void lock() {
    db.sql("select causes from cause_count where id = 1 for update").query().singleRow();
  }

  /** Appends a cause in the caller's transaction. */
  void append(long handIn, Cause cause, Optional<Person> teacher, Foretold foretold) {
    db.sql("update cause_count set causes = causes + 1 where id = 1").update();
    long number = db.sql("select causes from cause_count").query(Long.class).single();
    db.sql(
            """
            insert into causes (number, hand_in, source, kind, place, note, made_by, made_at,
              pointed, said, was_so)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
            """)
        .params(number, handIn, teacher.isPresent() ? "TEACHER" : "REPAIR")
        .params(cause.kind(), cause.place(), cause.note())
        .param(teacher.map(Person::id).orElse(null))
        .param(OffsetDateTime.now(clock))
        .param(foretold.pointed().orElse(null))
        .param(foretold.said().orElse(null))
        .param(foretold.wasSo().orElse(null))
        .update();
  }

  private static Confirmation confirmation(ResultSet row, int number) throws SQLException {
    return new Confirmation(
        row.getString("kind"),
        row.getString("place"),
        row.getString("note"),
        row.getString("name") == null ? Optional.empty() : Optional.of(People.person(row, number)),
        Instants.of(row, "made_at"));
  }
}
