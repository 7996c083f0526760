package org.holewise.school.account;

import java.time.Clock;
import java.time.OffsetDateTime;
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
}
