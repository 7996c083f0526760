package org.holewise.school.handin;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.holewise.school.account.Instants;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.session.Bench;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.support.TransactionTemplate;

/** What benches handed in. A hand-in is committed before it is marked, and never changed. */
@Repository
public class HandIns {

  private static final String SELECT =
      """
      select h.id as hand_in, h.bench, h.number, h.document, h.handed_at, p.id, p.name, p.role
      from hand_ins h join people p on p.id = h.handed_by
      """;

  private final JdbcClient db;
  private final TransactionTemplate transaction;
  private final LabSessions sessions;
  private final MarkingJobs jobs;
  private final Clock clock;

  HandIns(
      JdbcClient db,
      TransactionTemplate transaction,
      LabSessions sessions,
      MarkingJobs jobs,
      Clock clock) {
    this.db = db;
    this.transaction = transaction;
    this.sessions = sessions;
    this.jobs = jobs;
    this.clock = clock;
  }

  /**
   * Hands in the lines of a bench. The same request again gives the same hand-in.
   *
   * @throws KeyTaken where another request came under the key
   * @throws SessionClosed where the session is not open, unless the request is a repeat
   */
  public HandIn handIn(Person who, LabSession session, Bench bench, Request request, String lines) {
    var before = sent(bench, request);
    if (before.isPresent()) {
      return before.get();
    }
    if (!session.isOpen()) {
      throw new SessionClosed(session.id());
    }
    try {
      transaction.executeWithoutResult(status -> insert(who, session, bench, request, lines));
    } catch (DuplicateKeyException sentMeanwhile) {
      // Its twin was quicker; what it kept is the answer to both.
    }
    return sent(bench, request).orElseThrow();
  }

  /** What a bench handed in, the first first. */
  public List<HandIn> of(Bench bench) {
    return db
        .sql(SELECT + " where h.bench = ? order by h.number")
        .param(bench.id())
        .query(HandIns::row)
        .list()
        .stream()
        .map(this::whole)
        .toList();
  }

  public Optional<HandIn> find(Bench bench, int number) {
    return db.sql(SELECT + " where h.bench = ? and h.number = ?")
        .params(bench.id(), number)
        .query(HandIns::row)
        .optional()
        .map(this::whole);
  }

  /**
   * What was handed in with a request.
   *
   * @throws KeyTaken where another request came under the key
   */
  public Optional<HandIn> sent(Bench bench, Request request) {
    var digest =
        db.sql("select request_sha256 from hand_ins where bench = ? and request_key = ?")
            .params(bench.id(), request.key())
            .query(String.class)
            .optional();
    if (digest.isPresent() && !digest.get().equals(request.digest())) {
      throw new KeyTaken(request.key());
    }
    return digest.flatMap(
        same ->
            db.sql(SELECT + " where h.bench = ? and h.request_key = ?")
                .params(bench.id(), request.key())
                .query(HandIns::row)
                .optional()
                .map(this::whole));
  }

  // The lock on the bench makes its hand-ins count one after the other.
  private void insert(Person who, LabSession session, Bench bench, Request request, String lines) {
    db.sql("select id from benches where id = ? for update").param(bench.id()).query().singleRow();
    db.sql(
            """
            insert into hand_ins
              (bench, number, request_key, request_sha256, document, handed_by, handed_at)
            select ?, count(*) + 1, ?, ?, ?, ?, ? from hand_ins where bench = ?
            """)
        .params(bench.id(), request.key(), request.digest(), lines, who.id())
        .params(OffsetDateTime.now(clock), bench.id())
        .update();
    long id =
        db.sql("select id from hand_ins where bench = ? and request_key = ?")
            .params(bench.id(), request.key())
            .query(Long.class)
            .single();
    db.sql(
            """
            insert into hand_in_members (hand_in, person)
            select ?, person from bench_members where bench = ?
            """)
        .params(id, bench.id())
        .update();
    jobs.add(id, 0);
    sessions.changed(session.id());
  }

  private static HandIn row(ResultSet row, int number) throws SQLException {
    return new HandIn(
        row.getLong("hand_in"),
        row.getLong("bench"),
        row.getInt("number"),
        row.getString("document"),
        People.person(row, number),
        List.of(),
        Instants.of(row, "handed_at"));
  }

  // Members are looked up after the rows: a query within a query would need a second connection.
  private HandIn whole(HandIn row) {
    return new HandIn(
        row.id(), row.bench(), row.number(), row.lines(), row.by(), members(row.id()), row.at());
  }

  private List<Person> members(long handIn) {
    return db.sql(
            """
            select p.id, p.name, p.role from people p join hand_in_members m on m.person = p.id
            where m.hand_in = ? order by lower(p.name), p.id
            """)
        .param(handIn)
        .query(People::person)
        .list();
  }
}
