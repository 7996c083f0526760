package org.holewise.school.handin;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import org.holewise.school.account.Audit;
import org.holewise.school.account.Instants;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.session.LabSessions;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Teachers' own marks. Each is a row of its own; the last one of a hand-in counts. */
@Repository
public class Overrulings {

  private final JdbcClient db;
  private final LabSessions sessions;
  private final Audit audit;
  private final Clock clock;

  Overrulings(JdbcClient db, LabSessions sessions, Audit audit, Clock clock) {
    this.db = db;
    this.sessions = sessions;
    this.audit = audit;
    this.clock = clock;
  }

  @Transactional
  public void add(Person teacher, HandIn handIn, int wiring, int readings, String reason) {
    db.sql(
            """
            insert into overrulings (hand_in, wiring, readings, reason, made_by, made_at)
            values (?, ?, ?, ?, ?, ?)
            """)
        .params(handIn.id(), wiring, readings, reason.strip(), teacher.id())
        .params(OffsetDateTime.now(clock))
        .update();
    audit.note(teacher, "mark.overruled", "hand-in", handIn.id());
    sessions.changed(session(handIn));
  }

  private long session(HandIn handIn) {
    return db.sql("select lab_session from benches where id = ?")
        .param(handIn.bench())
        .query(Long.class)
        .single();
  }

  /** Overrulings of a hand-in, the last first. */
  public List<Overruling> of(HandIn handIn) {
    return db.sql(
            """
            select p.id, p.name, p.role, o.wiring, o.readings, o.reason, o.made_at
            from overrulings o join people p on p.id = o.made_by
            where o.hand_in = ? order by o.id desc
            """)
        .param(handIn.id())
        .query(
            (row, n) ->
                new Overruling(
                    row.getInt("wiring"),
                    row.getInt("readings"),
                    row.getString("reason"),
                    People.person(row, n),
                    Instants.of(row, "made_at")))
        .list();
  }
}
