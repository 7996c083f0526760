package org.holewise.school.session;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.holewise.school.account.Audit;
import org.holewise.school.account.ClassHours;
import org.holewise.school.account.Instants;
import org.holewise.school.account.Person;
import org.holewise.school.library.ExerciseVersion;
import org.holewise.school.library.ExerciseVersions;
import org.holewise.school.roster.ClassGroup;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The lab sessions of the school. */
@Repository
public class LabSessions implements ClassHours {

  private static final String SUBJECT = "session";

  private static final String SELECT =
      """
      select s.id, s.class_group, g.name as group_name, s.exercise_version, s.planned_for,
        s.hint_step, s.look_first, s.changes, s.opened_at, s.closed_at, s.released_at
      from lab_sessions s join class_groups g on g.id = s.class_group
      """;

  private static final String OF_STUDENT =
      " s.class_group in (select class_group from group_members where person = ?)";

  private static final String IS_OPEN = " s.opened_at is not null and s.closed_at is null";

  private final JdbcClient db;
  private final ExerciseVersions versions;
  private final Audit audit;
  private final Clock clock;

  LabSessions(JdbcClient db, ExerciseVersions versions, Audit audit, Clock clock) {
    this.db = db;
    this.versions = versions;
    this.audit = audit;
    this.clock = clock;
  }

  /** Plans a session with its benches, numbered from 1. */
  @Transactional
  public LabSession plan(Person teacher, Plan plan) {
    db.sql(
            """
            insert into lab_sessions
              (class_group, exercise_version, planned_for, hint_step, look_first, made_by, made_at)
            values (?, ?, ?, ?, ?, ?, ?)
            """)
        .params(plan.group().id(), plan.version().id(), plan.day(), plan.hint().name())
        .params(plan.lookFirst(), teacher.id(), now())
        .update();
    long id =
        db.sql("select max(id) from lab_sessions where made_by = ?")
            .param(teacher.id())
            .query(Long.class)
            .single();
    IntStream.rangeClosed(1, plan.benches()).forEach(number -> addBench(id, number));
    audit.note(teacher, "session.planned", SUBJECT, id);
    return find(id).orElseThrow();
  }

  public Optional<LabSession> find(long id) {
    return sessions(" where s.id = ?", id).stream().findFirst();
  }

  /** All sessions, the latest day first. */
  public List<LabSession> all() {
    return sessions(" order by s.planned_for desc, s.id desc");
  }

  /** The sessions of seven days. */
  public List<LabSession> inWeekFrom(LocalDate day) {
    return sessions(
        " where s.planned_for between ? and ? order by s.planned_for, s.id", day, day.plusDays(6));
  }

  /** The open sessions of a student's classes, the latest first. */
  public List<LabSession> openFor(Person student) {
    return sessions(
        " where" + OF_STUDENT + " and" + IS_OPEN + " order by s.opened_at desc", student.id());
  }

  @Override
  public boolean areOnFor(Person student) {
    return db.sql("select count(*) from lab_sessions s where" + OF_STUDENT + " and" + IS_OPEN)
            .param(student.id())
            .query(Integer.class)
            .single()
        > 0;
  }

  /** Opens a session, or a closed one again; false where it is open. */
  @Transactional
  public boolean open(Person teacher, long id) {
    return done(
        teacher,
        "session.opened",
        id,
        """
        update lab_sessions set opened_at = coalesce(opened_at, ?), closed_at = null,
          changes = changes + 1
        where id = ? and (opened_at is null or closed_at is not null)
        """,
        now());
  }

  /** Closes an open session; false where it is not open. */
  @Transactional
  public boolean close(Person teacher, long id) {
    return done(
        teacher,
        "session.closed",
        id,
        """
        update lab_sessions set closed_at = ?, changes = changes + 1
        where id = ? and opened_at is not null and closed_at is null
        """,
        now());
  }

  /** Shows results to the students; false where they are shown. */
  @Transactional
  public boolean release(Person teacher, long id) {
    return done(
        teacher,
        "session.released",
        id,
        "update lab_sessions set released_at = ? where id = ? and released_at is null",
        now());
  }

  /** Takes results back from the students' pages; false where they are not shown. */
  @Transactional
  public boolean withhold(Person teacher, long id) {
    return done(
        teacher,
        "session.withheld",
        id,
        """
        update lab_sessions set released_at = null
        where id = ? and released_at is not null
        """);
  }

  /** Settles how far hints go from now on, and whether a teacher looks before power. */
  @Transactional
  public boolean settle(Person teacher, long id, HintStep hint, boolean lookFirst) {
    return done(
        teacher,
        "session.settled",
        id,
        """
        update lab_sessions set hint_step = ?, look_first = ?, changes = changes + 1
        where id = ?
        """,
        hint.name(),
        lookFirst);
  }

  /** Something that the room shows has changed; in the transaction that changed it, at its end. */
  public void changed(long id) {
    db.sql("update lab_sessions set changes = changes + 1 where id = ?").param(id).update();
  }

  /** {@code update}: what changes the session, whose number is its last parameter. */
  private boolean done(Person teacher, String act, long id, String update, Object... parameters) {
    boolean changed = db.sql(update).params(parameters).param(id).update() == 1;
    if (changed) {
      audit.note(teacher, act, SUBJECT, id);
    }
    return changed;
  }

  private void addBench(long session, int number) {
    db.sql("insert into benches (lab_session, number) values (?, ?)")
        .params(session, number)
        .update();
  }

  private OffsetDateTime now() {
    return OffsetDateTime.now(clock);
  }

  // Exercises are looked up after the rows: a query within a query would need a second connection,
  // for which as many as there are at once would wait for each other.
  private List<LabSession> sessions(String which, Object... parameters) {
    return db.sql(SELECT + which).params(parameters).query(LabSessions::row).list().stream()
        .map(row -> row.with(versions.find(row.version()).orElseThrow()))
        .toList();
  }

  private record Row(
      long id,
      ClassGroup group,
      long version,
      LocalDate day,
      HintStep hint,
      boolean lookFirst,
      Optional<Instant> opened,
      Optional<Instant> closed,
      Optional<Instant> released,
      long changes) {

    LabSession with(ExerciseVersion exercise) {
      return new LabSession(
          id, group, exercise, day, hint, lookFirst, opened, closed, released, changes);
    }
  }

  private static Row row(ResultSet row, int number) throws SQLException {
    return new Row(
        row.getLong("id"),
        new ClassGroup(row.getLong("class_group"), row.getString("group_name")),
        row.getLong("exercise_version"),
        row.getObject("planned_for", LocalDate.class),
        HintStep.valueOf(row.getString("hint_step")),
        row.getBoolean("look_first"),
        Instants.maybe(row, "opened_at"),
        Instants.maybe(row, "closed_at"),
        Instants.maybe(row, "released_at"),
        row.getLong("changes"));
  }
}
