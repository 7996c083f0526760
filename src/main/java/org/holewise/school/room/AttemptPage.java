package org.holewise.school.room;

import java.util.List;
import java.util.Optional;
import org.holewise.document.picture.Highlight;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.school.account.Person;
import org.holewise.school.handin.Answer;
import org.holewise.school.handin.Answers;
import org.holewise.school.handin.Confirmations;
import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.Marks;
import org.holewise.school.handin.Overrulings;
import org.holewise.school.session.Bench;
import org.holewise.school.session.LabSession;
import org.holewise.school.sheet.BenchView;
import org.holewise.school.sheet.KeptMark;
import org.holewise.school.sheet.MarkSheet;
import org.holewise.school.sheet.Moment;
import org.holewise.school.sheet.Moments;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** What the page of a bench shows of one hand-in: its mark, and what teachers made of it. */
@Component
class AttemptPage {

  private final Paths paths;
  private final Marks marks;
  private final Answers answers;
  private final Overrulings overrulings;
  private final Confirmations confirmations;
  private final Moments moments;

  AttemptPage(
      Paths paths,
      Marks marks,
      Answers answers,
      Overrulings overrulings,
      Confirmations confirmations,
      Moments moments) {
    this.paths = paths;
    this.marks = marks;
    this.answers = answers;
    this.overrulings = overrulings;
    this.confirmations = confirmations;
    this.moments = moments;
  }

  /** Who handed in, and who was at the bench. */
  record Sender(String by, List<String> members, Moment at) {}

  /** A teacher's own marks; {@code counts}: the last ones. */
  record Own(
      int wiring, int readings, int total, String reason, String by, Moment at, boolean counts) {}

  /** A known cause; without a teacher where a repair proved it. */
  record Confirmed(String kind, String place, String note, Optional<String> by, Moment at) {}

  void show(LabSession session, BenchProgress progress, Bench bench, int number, Model model) {
    HandIn handIn = paths.handIn(bench, number);
    Optional<KeptMark> kept = kept(handIn);
    BenchRecord record = handIn.record(session.exercise());
    Optional<MarkSheet> sheet = kept.map(mark -> MarkSheet.of(session.exercise(), record, mark));
    Highlight highlight = sheet.map(MarkSheet::highlight).orElse(Highlight.NONE);
    Optional<Result> result =
        progress.attempts().stream()
            .filter(attempt -> attempt.number() == number)
            .findFirst()
            .flatMap(Attempt::result);
    model.addAttribute("sender", sender(handIn));
    model.addAttribute("mark", sheet);
    model.addAttribute("result", result);
    model.addAttribute("board", BenchView.of(session.exercise(), record.build(), highlight));
    model.addAttribute("lines", handIn.lines());
    model.addAttribute("answers", answers.of(handIn).stream().map(Answer::line).toList());
    model.addAttribute("scheme", session.exercise().marks());
    model.addAttribute("overrulings", own(handIn));
    model.addAttribute("confirmed", confirmed(handIn));
    model.addAttribute("causes", causes(kept));
    BenchPage.absentForm(model, "overruling", NewOverruling.from(result));
    BenchPage.absentForm(model, "found", new NewCause("", "", ""));
  }

  /** What can be confirmed as the cause of what a hand-in's mark says. */
  List<Causes.Choice> causes(HandIn handIn) {
    return causes(kept(handIn));
  }

  private static List<Causes.Choice> causes(Optional<KeptMark> kept) {
    return kept.map(Causes::of).orElseGet(Causes::others);
  }

  private Optional<KeptMark> kept(HandIn handIn) {
    return marks.latest(handIn).map(row -> KeptMark.read(row.document()));
  }

  private Sender sender(HandIn handIn) {
    return new Sender(
        handIn.by().name(),
        handIn.members().stream().map(Person::name).toList(),
        moments.of(handIn.at()));
  }

  private List<Own> own(HandIn handIn) {
    var all = overrulings.of(handIn);
    return all.stream()
        .map(
            one ->
                new Own(
                    one.wiring(),
                    one.readings(),
                    one.total(),
                    one.reason(),
                    one.by().name(),
                    moments.of(one.at()),
                    one.equals(all.get(0))))
        .toList();
  }

  private Optional<Confirmed> confirmed(HandIn handIn) {
    return confirmations
        .of(handIn)
        .map(
            cause ->
                new Confirmed(
                    cause.kind(),
                    cause.place(),
                    cause.note(),
                    cause.by().map(Person::name),
                    moments.of(cause.at())));
  }
}
