package org.holewise.school.handin;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.holewise.school.account.Audit;
import org.holewise.school.account.Instants;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.session.Bench;
import org.holewise.school.session.LabSessions;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** When teachers saw what at the benches. */
@Repository
public class Looks {

  private final JdbcClient db;
  private final LabSessions sessions;
  private final Audit audit;
  private final Clock clock;

  Looks(JdbcClient db, LabSessions sessions, Audit audit, Clock clock) {
    this.db = db;
    this.sessions = sessions;
    this.audit = audit;
    this.clock = clock;
  }

  @Transactional
  public void add(Person teacher, Bench bench, String note) {
    db.sql("insert into looks (bench, note, made_by, made_at) values (?, ?, ?, ?)")
        .params(bench.id(), note.strip(), teacher.id(), OffsetDateTime.now(clock))
        .update();
    audit.note(teacher, "bench.seen", "bench", bench.id());
    sessions.changed(bench.session());
  }

  /** Looks at a bench, the last first. */
  public List<Look> of(Bench bench) {
    return db.sql(
            """
            select p.id, p.name, p.role, l.note, l.made_at from looks l
            join people p on p.id = l.made_by where l.bench = ? order by l.id desc
            """)
        .param(bench.id())
        .query(
            (row, n) ->
                new Look(People.person(row, n), row.getString("note"), Instants.of(row, "made_at")))
        .list();
  }

  public Optional<Instant> latest(Bench bench) {
    return of(bench).stream().findFirst().map(Look::at);
  }
}
