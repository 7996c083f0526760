package org.holewise.school.handin;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.school.account.Instants;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.session.Bench;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The drafts of benches, shared by their members, one row an entry. */
@Repository
public class Drafts {

  /** More than any board takes. */
  public static final int MOST_ENTRIES = 400;

  private static final String SELECT =
      """
      select e.bench, e.name as entry, e.text, e.revision, e.written_at, p.id, p.name, p.role
      from draft_entries e join people p on p.id = e.written_by
      """;

  private final JdbcClient db;
  private final LabSessions sessions;
  private final Clock clock;

  Drafts(JdbcClient db, LabSessions sessions, Clock clock) {
    this.db = db;
    this.sessions = sessions;
    this.clock = clock;
  }

  /** All entries of a bench, in the order in which they were begun; those taken out included. */
  public List<DraftEntry> of(Bench bench) {
    return db.sql(SELECT + " where e.bench = ? order by e.made_at, e.name")
        .param(bench.id())
        .query(Drafts::entry)
        .list();
  }

  /** The entries of all benches of a session, by the ids of the benches that have any. */
  public Map<Long, List<DraftEntry>> in(LabSession session) {
    var drafts = new HashMap<Long, List<DraftEntry>>();
    db.sql(
            SELECT
                + """
                 join benches b on b.id = e.bench where b.lab_session = ?
                order by e.made_at, e.name
                """)
        .param(session.id())
        .query(
            row -> {
              drafts
                  .computeIfAbsent(row.getLong("bench"), bench -> new ArrayList<>())
                  .add(entry(row, 0));
            });
    return drafts;
  }

  /**
   * Saves changes, all or none. A text that is there already changes nothing, so that a repeat is
   * harmless.
   */
  @Transactional
  public Saved save(Person writer, Bench bench, List<Change> changes) {
    db.sql("select id from benches where id = ? for update").param(bench.id()).query().singleRow();
    var entries = new ArrayList<DraftEntry>();
    var replaced = new ArrayList<DraftEntry>();
    boolean anything = false;
    for (Change change : changes) {
      var before = find(bench, change.name());
      if (before.filter(entry -> entry.text().equals(change.text())).isEmpty()) {
        write(writer, bench, change, before);
        before.filter(entry -> entry.revision() != change.base()).ifPresent(replaced::add);
        anything = true;
      }
      find(bench, change.name()).ifPresent(entries::add);
    }
    if (anything) {
      sessions.changed(bench.session());
    }
    return new Saved(entries, replaced);
  }

  private Optional<DraftEntry> find(Bench bench, String name) {
    return db.sql(SELECT + " where e.bench = ? and e.name = ?")
        .params(bench.id(), name)
        .query(Drafts::entry)
        .optional();
  }

  private void write(Person writer, Bench bench, Change change, Optional<DraftEntry> before) {
    var now = OffsetDateTime.now(clock);
    if (before.isPresent()) {
      db.sql(
              """
              update draft_entries set text = ?, revision = revision + 1, written_by = ?,
                written_at = ?
              where bench = ? and name = ?
              """)
          .params(change.text(), writer.id(), now, bench.id(), change.name())
          .update();
    } else {
      db.sql(
              """
              insert into draft_entries
                (bench, name, text, revision, made_at, written_by, written_at)
              values (?, ?, ?, 1, ?, ?, ?)
              """)
          .params(bench.id(), change.name(), change.text(), now, writer.id(), now)
          .update();
    }
  }

  private static DraftEntry entry(ResultSet row, int number) throws SQLException {
    return new DraftEntry(
        row.getString("entry"),
        row.getString("text"),
        row.getLong("revision"),
        People.person(row, number),
        Instants.of(row, "written_at"));
  }
}
