package org.holewise.school.session;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.holewise.school.account.Audit;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The benches of sessions and their members. */
@Repository
public class Benches {

  /** As many as can work on one board. */
  public static final int MOST_MEMBERS = 4;

  private static final String SELECT =
      """
      select b.id as bench, b.lab_session, b.number, p.id, p.name, p.role from benches b
      left join bench_members m on m.bench = b.id left join people p on p.id = m.person
      """;

  private static final String ORDER = " order by b.number, m.joined_at, p.id";

  private final JdbcClient db;
  private final LabSessions sessions;
  private final Audit audit;
  private final Clock clock;

  Benches(JdbcClient db, LabSessions sessions, Audit audit, Clock clock) {
    this.db = db;
    this.sessions = sessions;
    this.audit = audit;
    this.clock = clock;
  }

  /** All benches of a session, by number. */
  public List<Bench> of(LabSession session) {
    return list(SELECT + " where b.lab_session = ?" + ORDER, session.id());
  }

  /** A bench of a session, for who looks after all of them. */
  public Optional<Bench> find(LabSession session, long bench) {
    return list(SELECT + " where b.lab_session = ? and b.id = ?" + ORDER, session.id(), bench)
        .stream()
        .findFirst();
  }

  /** The bench if the student works, or worked, there. */
  public Optional<Bench> of(Person student, long bench) {
    return list(
            SELECT
                + """
                 where b.id = ?
                and exists (select 1 from bench_members x where x.bench = b.id and x.person = ?)
                """
                + ORDER,
            bench,
            student.id())
        .stream()
        .findFirst();
  }

  /** Every bench that the student has or had, the latest session first. */
  public List<Bench> allOf(Person student) {
    return list(
        SELECT
            + """
             where exists (select 1 from bench_members x where x.bench = b.id and x.person = ?)
            order by b.lab_session desc, m.joined_at, p.id
            """,
        student.id());
  }

  /** How a wish for a bench ended. */
  public enum Joined {
    HERE,
    /** The student has another bench in this session; a teacher can change that. */
    ELSEWHERE,
    FULL,
    NO_SUCH_BENCH
  }

  /** A student of the class takes a place at a bench of an open session. */
  @Transactional
  public Joined join(LabSession session, int number, Person student) {
    var bench = locked(session, number);
    if (bench.isEmpty()) {
      return Joined.NO_SUCH_BENCH;
    }
    var before = benchOf(session, student);
    if (before.isPresent()) {
      return before.get().equals(bench.get()) ? Joined.HERE : Joined.ELSEWHERE;
    }
    if (members(bench.get()) >= MOST_MEMBERS) {
      return Joined.FULL;
    }
    return seat(session, bench.get(), student) ? Joined.HERE : Joined.ELSEWHERE;
  }

  /** A teacher puts a student at a bench, from wherever the student was. */
  @Transactional
  public boolean move(Person teacher, LabSession session, Person student, int number) {
    var bench = locked(session, number);
    if (bench.isEmpty()) {
      return false;
    }
    leave(session, student);
    seat(session, bench.get(), student);
    audit.note(teacher, "bench.moved", "person", student.id());
    return true;
  }

  /** A teacher takes a student from the benches of a session; false where the student had none. */
  @Transactional
  public boolean unseat(Person teacher, LabSession session, Person student) {
    boolean had = leave(session, student);
    if (had) {
      audit.note(teacher, "bench.moved", "person", student.id());
      sessions.changed(session.id());
    }
    return had;
  }

  private boolean leave(LabSession session, Person student) {
    return db.sql("delete from bench_members where lab_session = ? and person = ?")
            .params(session.id(), student.id())
            .update()
        == 1;
  }

  private Optional<Long> locked(LabSession session, int number) {
    return db.sql("select id from benches where lab_session = ? and number = ? for update")
        .params(session.id(), number)
        .query(Long.class)
        .optional();
  }

  private Optional<Long> benchOf(LabSession session, Person student) {
    return db.sql("select bench from bench_members where lab_session = ? and person = ?")
        .params(session.id(), student.id())
        .query(Long.class)
        .optional();
  }

  private int members(long bench) {
    return db.sql("select count(*) from bench_members where bench = ?")
        .param(bench)
        .query(Integer.class)
        .single();
  }

  // A second request of the same student may have been quicker at another bench.
  private boolean seat(LabSession session, long bench, Person student) {
    try {
      db.sql(
              """
              insert into bench_members (lab_session, person, bench, joined_at) values (?, ?, ?, ?)
              """)
          .params(session.id(), student.id(), bench, OffsetDateTime.now(clock))
          .update();
    } catch (DuplicateKeyException already) {
      return false;
    }
    sessions.changed(session.id());
    return true;
  }

  private List<Bench> list(String sql, Object... parameters) {
    var benches = new LinkedHashMap<Long, Bench>();
    db.sql(sql)
        .params(parameters)
        .query(
            row -> {
              var bench = bench(row);
              benches
                  .computeIfAbsent(bench.id(), id -> bench)
                  .members()
                  .addAll(member(row).stream().toList());
            });
    return benches.values().stream()
        .map(b -> new Bench(b.id(), b.session(), b.number(), List.copyOf(b.members())))
        .toList();
  }

  private static Bench bench(ResultSet row) throws SQLException {
    return new Bench(
        row.getLong("bench"), row.getLong("lab_session"), row.getInt("number"), new ArrayList<>());
  }

  private static Optional<Person> member(ResultSet row) throws SQLException {
    return row.getString("name") == null ? Optional.empty() : Optional.of(People.person(row, 0));
  }
}
