package org.holewise.school.sheet;

import java.util.List;
import java.util.Optional;
import org.holewise.document.picture.Highlight;
import org.holewise.document.text.Messages;
import org.holewise.document.text.Texts;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Build;
import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Reading;
import org.holewise.school.session.HintStep;
import org.holewise.school.sheet.KeptMark.Judgement;
import org.holewise.school.sheet.KeptMark.Told;
import org.holewise.school.sheet.MarkSheet.Fit;
import org.holewise.school.sheet.MarkSheet.Look;
import org.holewise.school.sheet.MarkSheet.Next;
import org.holewise.school.sheet.StudentSheet.Result;
import org.holewise.school.sheet.StudentSheet.Row;

/** Puts a mark into the words of the student's page, as far as a hint step goes. */
final class StudentReport {
  /** Findings that name no place; the others name what only the last step may. */
  private static final List<String> ABOUT_THE_RECORD =
      List.of(
          "layout-missing",
          "layout-doubtful",
          "other-exercise",
          "other-board",
          "other-meter",
          "unknown-reading",
          "unknown-condition",
          "extra-id-taken");

  private static final int MOST_ACTS = 3;

  private final Exercise exercise;
  private final BenchRecord record;
  private final KeptMark mark;
  private final HintStep hint;
  private final MarkReport report;
  private final Optional<Target> target;

  StudentReport(Exercise exercise, BenchRecord record, KeptMark mark, HintStep hint) {
    this.exercise = exercise;
    this.record = record;
    this.mark = mark;
    this.hint = hint;
    this.report = new MarkReport(exercise, record, mark);
    this.target = new Targeting(exercise, record, report).first(mark);
  }

  StudentSheet sheet(boolean released) {
    return new StudentSheet(
        Warning.of(mark.cautions()),
        List.of(wiringFits(), report.readingsFit()),
        mark.readings().stream().map(this::row).toList(),
        target.isEmpty(),
        target.flatMap(this::look),
        hint.reaches(HintStep.PART) && doubtful(),
        target.map(this::highlight).orElse(Highlight.NONE),
        hint.reaches(HintStep.PLACE) ? acts() : List.of(),
        mark.next().map(Told::what).filter(this::mayAsk).map(this::next),
        findings(),
        released ? Optional.of(result()) : Optional.empty());
  }

  /** Whether it matches, never in how many places. */
  private Fit wiringFits() {
    if (record.build().isEmpty()) {
      return new Fit("waits", Said.of("sheet.fits.no-layout"));
    }
    if (mark.wiringMatches()) {
      return new Fit("fits", Said.of("sheet.fits.wiring"));
    }
    String key = mark.points().held() ? "sheet.fits.wiring.doubtful" : "sheet.fits.wiring.not";
    return new Fit("look", Said.of(key));
  }

  private Row row(Judgement read) {
    boolean choice = exercise.conditions().size() > 1;
    return new Row(
        read.id(),
        report.label(read),
        choice ? reading(read.id()).map(Reading::when).orElse("") : "",
        report.typed(read),
        Readout.state(read.verdict()),
        Readout.word(read.verdict()),
        Readout.advice(read));
  }

  private Optional<Reading> reading(String id) {
    return exercise.readings().stream().filter(reading -> reading.id().equals(id)).findFirst();
  }

  private Optional<Look> look(Target target) {
    return switch (hint) {
      case VERDICTS -> Optional.empty();
      case AREA -> Optional.of(Look.at(area(target)));
      case PART -> Optional.of(Look.at(Messages.english().say(target.key(), target.name())));
      case PLACE -> Optional.of(new Look(target.sentence(), target.others()));
    };
  }

  private String area(Target target) {
    Messages messages = Messages.english();
    if (target.kind().equals("reading")) {
      return messages.say("hint.area.reading");
    }
    if (record.build().isEmpty()) {
      return messages.say("hint.area.no-layout");
    }
    return around(target).said().orElseGet(() -> messages.say("hint.area.unplaced"));
  }

  private Area around(Target target) {
    BoardModel board = record.build().map(Build::board).orElse(exercise.board());
    return Area.around(target.around(), board);
  }

  private Highlight highlight(Target target) {
    return switch (hint) {
      case VERDICTS -> Highlight.NONE;
      case AREA -> Highlight.within(around(target).patches());
      case PART ->
          target.name().isEmpty()
              ? Highlight.within(around(target).patches())
              : Highlight.rings(target.around());
      case PLACE -> Highlight.of(target.holes());
    };
  }

  private boolean doubtful() {
    return mark.differences().isEmpty()
        && mark.suspect().filter(suspect -> !suspect.what().alike().isEmpty()).isPresent();
  }

  /** Only what is to be done there: other places are not for students. */
  private List<String> acts() {
    return mark.acts().stream()
        .filter(act -> target.filter(t -> t.place().equals(act.what().place())).isPresent())
        .map(Told::text)
        .distinct()
        .limit(MOST_ACTS)
        .toList();
  }

  /**
   * A reading names its points: not before the part is named, and then not if it tells the lead.
   */
  private boolean mayAsk(NextReading next) {
    return hint.reaches(HintStep.PLACE)
        || hint.reaches(HintStep.PART) && target.filter(t -> t.toldBy(next.measure())).isEmpty();
  }

  /** The condition is named where it is not the one that the circuit is in anyway. */
  private Next next(NextReading next) {
    var texts = new Texts(Messages.english(), exercise, record.build(), false);
    boolean usual = next.when().equals(exercise.conditions().get(0).name());
    String text = usual ? texts.asked(next.measure()) : texts.next(next);
    return new Next(text, MarkReport.line(exercise, next));
  }

  private List<String> findings() {
    return mark.findings().stream()
        .filter(
            finding ->
                hint.reaches(HintStep.PLACE) || ABOUT_THE_RECORD.contains(finding.what().kind()))
        .map(Told::text)
        .distinct()
        .toList();
  }

  private Result result() {
    return new Result(
        mark.points(), exercise.marks().wiring(), report.differences(), report.readouts());
  }
}
