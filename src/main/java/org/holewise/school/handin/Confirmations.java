package org.holewise.school.handin;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.holewise.school.account.Audit;
import org.holewise.school.account.Instants;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.support.TransactionTemplate;

/** Causes that teachers confirmed; appended, one a hand-in. */
@Repository
public class Confirmations {

  private final JdbcClient db;
  private final TransactionTemplate transaction;
  private final Audit audit;
  private final Clock clock;

  Confirmations(JdbcClient db, TransactionTemplate transaction, Audit audit, Clock clock) {
    this.db = db;
    this.transaction = transaction;
    this.audit = audit;
    this.clock = clock;
  }

  /** Keeps a cause; false where one is kept already. */
  public boolean add(Person teacher, HandIn handIn, String kind, String place, String note) {
    try {
      transaction.executeWithoutResult(
          status -> insert(teacher, handIn, kind, place, note.strip()));
      return true;
    } catch (DuplicateKeyException already) {
      return false;
    }
  }

  public Optional<Confirmation> of(HandIn handIn) {
    return db.sql(
            """
            select p.id, p.name, p.role, c.kind, c.place, c.note, c.made_at
            from confirmations c join people p on p.id = c.made_by where c.hand_in = ?
            """)
        .param(handIn.id())
        .query(
            (row, n) ->
                new Confirmation(
                    row.getString("kind"),
                    row.getString("place"),
                    row.getString("note"),
                    People.person(row, n),
                    Instants.of(row, "made_at")))
        .optional();
  }

  private void insert(Person teacher, HandIn handIn, String kind, String place, String note) {
    db.sql(
            """
            insert into confirmations (hand_in, kind, place, note, made_by, made_at)
            values (?, ?, ?, ?, ?, ?)
            """)
        .params(handIn.id(), kind, place, note, teacher.id(), OffsetDateTime.now(clock))
        .update();
    audit.note(teacher, "cause.confirmed", "hand-in", handIn.id());
  }
}
