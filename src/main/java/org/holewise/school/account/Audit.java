package org.holewise.school.account;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Who did what to what. Rows are only ever added, and name nobody: people are ids. */
@Repository
public class Audit {

  private final JdbcClient db;
  private final Clock clock;

  Audit(JdbcClient db, Clock clock) {
    this.db = db;
    this.clock = clock;
  }

  /**
   * Notes an act, in the caller's transaction.
   *
   * @param act what was done, as {@code session.opened}: the key of its text below {@code audit.}
   * @param subject the kind of thing it was done to, such as {@code session}
   */
  public void note(Person actor, String act, String subject, long subjectId) {
    db.sql(
            """
            insert into audit_events (happened_at, actor, act, subject, subject_id)
            values (?, ?, ?, ?, ?)
            """)
        .params(OffsetDateTime.now(clock), actor.id(), act, subject, subjectId)
        .update();
  }

  /** What was noted before an event, the latest first. */
  List<AuditEvent> before(long id, int most) {
    return db.sql(
            """
            select e.id, e.happened_at, e.actor, p.name, e.act, e.subject, e.subject_id
            from audit_events e join people p on p.id = e.actor
            where e.id < ? order by e.id desc fetch first ? rows only
            """)
        .params(id, most)
        .query(Audit::event)
        .list();
  }

  private static AuditEvent event(ResultSet row, int number) throws SQLException {
    return new AuditEvent(
        row.getLong("id"),
        Instants.of(row, "happened_at"),
        row.getLong("actor"),
        row.getString("name"),
        row.getString("act"),
        row.getString("subject"),
        row.getLong("subject_id"));
  }
}
