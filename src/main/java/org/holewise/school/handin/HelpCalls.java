package org.holewise.school.handin;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.holewise.school.account.Person;
import org.holewise.school.session.Bench;
import org.holewise.school.session.LabSessions;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Benches that ask for a teacher; a bench has one call at a time. */
@Repository
public class HelpCalls {

  private final JdbcClient db;
  private final LabSessions sessions;
  private final Clock clock;

  HelpCalls(JdbcClient db, LabSessions sessions, Clock clock) {
    this.db = db;
    this.sessions = sessions;
    this.clock = clock;
  }

  /** Asks for a teacher; nothing new where the bench waits already. */
  @Transactional
  public void ask(Person who, Bench bench) {
    db.sql("select id from benches where id = ? for update").param(bench.id()).query().singleRow();
    if (waitsSince(bench).isEmpty()) {
      db.sql("insert into help_calls (bench, asked_by, asked_at) values (?, ?, ?)")
          .params(bench.id(), who.id(), OffsetDateTime.now(clock))
          .update();
      sessions.changed(bench.session());
    }
  }

  /** The call is answered, or taken back. */
  @Transactional
  public void end(Bench bench) {
    int ended =
        db.sql("update help_calls set ended_at = ? where bench = ? and ended_at is null")
            .params(OffsetDateTime.now(clock), bench.id())
            .update();
    if (ended > 0) {
      sessions.changed(bench.session());
    }
  }

  public Optional<Instant> waitsSince(Bench bench) {
    return db.sql("select asked_at from help_calls where bench = ? and ended_at is null")
        .param(bench.id())
        .query(OffsetDateTime.class)
        .optional()
        .map(OffsetDateTime::toInstant);
  }
}
