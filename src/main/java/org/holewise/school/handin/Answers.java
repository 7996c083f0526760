package org.holewise.school.handin;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import org.holewise.school.account.Instants;
import org.holewise.school.account.Person;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.support.TransactionTemplate;

/** Answers to asked readings. Each leads to one more mark of its hand-in; no mark loses by it. */
@Repository
public class Answers {

  private final JdbcClient db;
  private final TransactionTemplate transaction;
  private final LabSessions sessions;
  private final MarkingJobs jobs;
  private final Clock clock;

  Answers(
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

  /** Answers of a hand-in in the order given. */
  public List<Answer> of(HandIn handIn) {
    return of(handIn.id());
  }

  /**
   * Keeps an answer. The same again under its key changes nothing.
   *
   * @throws KeyTaken where another answer came under the key
   * @throws SessionClosed where the session is not open, unless the answer is a repeat
   */
  public void give(Person who, LabSession session, HandIn handIn, String key, String line) {
    if (isSent(handIn, key, line)) {
      return;
    }
    if (!session.isOpen()) {
      throw new SessionClosed(session.id());
    }
    try {
      transaction.executeWithoutResult(status -> insert(who, session, handIn, key, line));
    } catch (DuplicateKeyException sentMeanwhile) {
      isSent(handIn, key, line);
    }
  }

  List<Answer> of(long handIn) {
    return db.sql(
            """
            select number, line, given_at from answers where hand_in = ? order by number
            """)
        .param(handIn)
        .query(
            (row, n) ->
                new Answer(
                    row.getInt("number"), row.getString("line"), Instants.of(row, "given_at")))
        .list();
  }

  private boolean isSent(HandIn handIn, String key, String line) {
    var sent =
        db.sql("select line from answers where hand_in = ? and request_key = ?")
            .params(handIn.id(), key)
            .query(String.class)
            .optional();
    if (sent.isPresent() && !sent.get().equals(line)) {
      throw new KeyTaken(key);
    }
    return sent.isPresent();
  }

  private void insert(Person who, LabSession session, HandIn handIn, String key, String line) {
    db.sql("select id from hand_ins where id = ? for update")
        .param(handIn.id())
        .query()
        .singleRow();
    int number =
        db.sql("select count(*) + 1 from answers where hand_in = ?")
            .param(handIn.id())
            .query(Integer.class)
            .single();
    db.sql(
            """
            insert into answers (hand_in, number, request_key, line, given_by, given_at)
            values (?, ?, ?, ?, ?, ?)
            """)
        .params(handIn.id(), number, key, line, who.id(), OffsetDateTime.now(clock))
        .update();
    jobs.add(handIn.id(), number);
    sessions.changed(session.id());
  }
}
