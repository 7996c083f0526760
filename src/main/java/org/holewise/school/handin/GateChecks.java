package org.holewise.school.handin;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.holewise.school.account.Person;
import org.holewise.school.session.Bench;
import org.holewise.school.session.LabSessions;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The first gate of each bench: ready to switch on? */
@Repository
public class GateChecks {

  private final JdbcClient db;
  private final LabSessions sessions;
  private final Clock clock;

  GateChecks(JdbcClient db, LabSessions sessions, Clock clock) {
    this.db = db;
    this.sessions = sessions;
    this.clock = clock;
  }

  @Transactional
  public void add(Person who, Bench bench, String layout, boolean go) {
    db.sql(
            """
            insert into gate_checks (bench, layout, outcome, asked_by, asked_at)
            values (?, ?, ?, ?, ?)
            """)
        .params(bench.id(), layout, go ? "GO" : "STOP", who.id(), OffsetDateTime.now(clock))
        .update();
    sessions.changed(bench.session());
  }

  public Optional<GateCheck> latest(Bench bench) {
    return db.sql(
            """
            select layout, outcome, asked_at from gate_checks where bench = ?
            order by id desc fetch first 1 row only
            """)
        .param(bench.id())
        .query(
            (row, n) ->
                new GateCheck(
                    row.getString("layout"),
                    row.getString("outcome").equals("GO"),
                    row.getObject("asked_at", OffsetDateTime.class).toInstant()))
        .optional();
  }
}
