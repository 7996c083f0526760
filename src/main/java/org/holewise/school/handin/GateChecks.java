package org.holewise.school.handin;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.school.account.Instants;
import org.holewise.school.account.Person;
import org.holewise.school.session.Bench;
import org.holewise.school.session.LabSession;
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
    return of(bench).stream().findFirst();
  }

  /** What a bench was told each time it asked, the last first. */
  public List<GateCheck> of(Bench bench) {
    return db.sql(
            """
            select layout, outcome, asked_at from gate_checks where bench = ? order by id desc
            """)
        .param(bench.id())
        .query((row, n) -> check(row))
        .list();
  }

  /** What the benches of a session were told last, by the ids of those that have asked. */
  public Map<Long, GateCheck> latestIn(LabSession session) {
    var latest = new HashMap<Long, GateCheck>();
    db.sql(
            """
            select g.bench, g.layout, g.outcome, g.asked_at from gate_checks g
            where g.id in (
              select max(x.id) from gate_checks x join benches b on b.id = x.bench
              where b.lab_session = ? group by x.bench)
            """)
        .param(session.id())
        .query(
            row -> {
              latest.put(row.getLong("bench"), check(row));
            });
    return latest;
  }

  private static GateCheck check(ResultSet row) throws SQLException {
    return new GateCheck(
        row.getString("layout"),
        row.getString("outcome").equals("GO"),
        Instants.of(row, "asked_at"));
  }
}
