package org.holewise.school.handin;

import java.util.Optional;
import org.holewise.school.account.Audit;
import org.holewise.school.account.Person;
import org.holewise.school.session.LabSession;
import org.holewise.school.sheet.KeptMark;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** What teachers say the cause was. It stands above what a repair proved. */
@Repository
public class Confirmations {

  private final Known known;
  private final Repairs repairs;
  private final Marks marks;
  private final Audit audit;

  Confirmations(Known known, Repairs repairs, Marks marks, Audit audit) {
    this.known = known;
    this.repairs = repairs;
    this.marks = marks;
    this.audit = audit;
  }

  /** Keeps a cause; false where the same counts already. */
  @Transactional
  public boolean add(
      Person teacher, LabSession session, HandIn handIn, String kind, String place, String note) {
    var cause = new Cause(kind, place, note);
    Foretold foretold =
        marks
            .latest(handIn)
            .map(mark -> Foretold.of(KeptMark.read(mark.document()), cause))
            .orElse(Foretold.NOTHING);
    known.lock();
    if (known.of(handIn.id()).filter(before -> before.says(cause)).isPresent()) {
      return false;
    }
    known.append(handIn.id(), cause, Optional.of(teacher), foretold);
    repairs.look(handIn.id(), session.exercise());
    audit.note(teacher, "cause.confirmed", "hand-in", handIn.id());
    return true;
  }

  /** The cause of a hand-in that counts, a teacher's or a repair's. */
  public Optional<Confirmation> of(HandIn handIn) {
    return known.of(handIn.id());
  }
}
