package org.holewise.school.bench;

import java.util.Optional;
import java.util.UUID;
import org.holewise.document.RecordFindings;
import org.holewise.document.lines.BuildLines;
import org.holewise.document.picture.Highlight;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.school.account.Person;
import org.holewise.school.handin.Answer;
import org.holewise.school.handin.Answers;
import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.Marks;
import org.holewise.school.handin.Overrulings;
import org.holewise.school.session.LabSession;
import org.holewise.school.sheet.BenchView;
import org.holewise.school.sheet.KeptMark;
import org.holewise.school.sheet.Moments;
import org.holewise.school.sheet.Said;
import org.holewise.school.sheet.Schematics;
import org.holewise.school.sheet.StudentSheet;
import org.springframework.stereotype.Component;

/** Makes the page of a hand-in for its students. */
@Component
class AttemptPages {

  private final Marks marks;
  private final Answers answers;
  private final Overrulings overrulings;
  private final Schematics schematics;
  private final Moments moments;

  AttemptPages(
      Marks marks,
      Answers answers,
      Overrulings overrulings,
      Schematics schematics,
      Moments moments) {
    this.marks = marks;
    this.answers = answers;
    this.overrulings = overrulings;
    this.schematics = schematics;
    this.moments = moments;
  }

  AttemptPage of(Workplace place, HandIn handIn, String typed, Optional<Said> refused) {
    LabSession session = place.session();
    boolean released = session.released().isPresent();
    var given = answers.of(handIn);
    var mark = marks.latest(handIn);
    BenchRecord record = record(place, handIn);
    var sheet =
        mark.map(
            row ->
                StudentSheet.of(
                    place.exercise(),
                    record,
                    KeptMark.read(row.document()),
                    session.hint(),
                    released));
    return new AttemptPage(
        place.bench().id(),
        place.bench().number(),
        handIn.number(),
        place.exercise().title(),
        moments.of(handIn.at()),
        handIn.members().stream().map(Person::name).toList(),
        BenchView.of(
            place.exercise(),
            record.build(),
            sheet.map(StudentSheet::highlight).orElse(Highlight.NONE)),
        schematics.of(place.exercise()),
        sheet,
        sheet.flatMap(StudentSheet::next).filter(next -> session.isOpen() && !released),
        given.stream().map(Answer::line).toList(),
        session.isOpen(),
        released,
        mark.filter(row -> row.answers() < given.size()).isPresent(),
        UUID.randomUUID().toString(),
        typed,
        refused,
        released ? overrulings.of(handIn).stream().findFirst() : Optional.empty());
  }

  private BenchRecord record(Workplace place, HandIn handIn) {
    var lines = new StringBuilder(handIn.lines());
    answers.of(handIn).forEach(one -> lines.append("extra ").append(one.line()).append('\n'));
    var typed = BuildLines.read(lines.toString(), place.exercise()).record();
    return RecordFindings.usable(place.exercise(), typed);
  }
}
