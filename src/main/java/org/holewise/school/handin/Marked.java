package org.holewise.school.handin;

import java.util.Set;
import org.holewise.document.MarkDocument;
import org.holewise.document.MarkRequest;
import org.holewise.document.RecordFindings;
import org.holewise.document.text.Messages;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.marking.Mark;
import org.holewise.engine.marking.Marking;

/** A mark and the document that is kept of it. A function of the record and the priors alone. */
final class Marked {

  private final Mark mark;
  private final byte[] document;

  private Marked(Mark mark, byte[] document) {
    this.mark = mark;
    this.document = document;
  }

  static Marked of(Exercise exercise, BenchRecord typed, Priors priors) {
    BenchRecord record = RecordFindings.usable(exercise, typed);
    var request = new MarkRequest(exercise, record, RecordFindings.of(exercise, typed), Set.of());
    Mark mark = Marking.mark(exercise, record, priors, request.ask());
    return new Marked(
        mark, MarkDocument.bytes(MarkDocument.tree(request, mark, Messages.english())));
  }

  Mark mark() {
    return mark;
  }

  byte[] document() {
    return document;
  }
}
