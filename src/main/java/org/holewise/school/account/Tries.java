package org.holewise.school.account;

import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Counts tries at secrets, so that nobody can try for long. Kept in the database: a second copy of
 * the application counts along. A try is counted before the secret is looked at, so that many at
 * once do not slip through.
 */
@Repository
public class Tries {

  private static final Duration WINDOW = Duration.ofMinutes(15);

  private final JdbcClient db;
  private final Clock clock;

  Tries(JdbcClient db, Clock clock) {
    this.db = db;
    this.clock = clock;
  }

  /** Counts one more try at the thing; false where there were more than that many lately. */
  public boolean allow(String what, int most) {
    count(what);
    return lately(what) <= most;
  }

  /** Whether there were that many tries lately; only looks, for who counts but the wrong ones. */
  public boolean areSpent(String what, int most) {
    return lately(what) >= most;
  }

  /** Counts one more try at the thing. */
  public void count(String what) {
    var now = OffsetDateTime.now(clock);
    db.sql("delete from tries where tried_at < ?").param(now.minus(WINDOW)).update();
    db.sql("insert into tries (what_hash, tried_at) values (?, ?)")
        .params(Sha256.hex(what), now)
        .update();
  }

  private int lately(String what) {
    return db.sql("select count(*) from tries where what_hash = ? and tried_at >= ?")
        .params(Sha256.hex(what), OffsetDateTime.now(clock).minus(WINDOW))
        .query(Integer.class)
        .single();
  }

  /** Forgets the tries at a thing, since the last was right. */
  public void forget(String what) {
    db.sql("delete from tries where what_hash = ?").param(Sha256.hex(what)).update();
  }

  /** Takes back the last try at a thing that many use, since it was right. */
  public void forgive(String what) {
    db.sql(
            """
            delete from tries where id = (select max(id) from tries where what_hash = ?)
            """)
        .param(Sha256.hex(what))
        .update();
  }
}
