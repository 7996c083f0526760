package org.holewise.school.sheet;

import java.util.List;
import java.util.Optional;
import org.holewise.document.picture.Highlight;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.marking.Points;
import org.holewise.school.session.HintStep;
import org.holewise.school.sheet.MarkSheet.Fit;
import org.holewise.school.sheet.MarkSheet.Look;
import org.holewise.school.sheet.MarkSheet.Next;

/**
 * What a student may see of a mark. Before the results are released it holds no expected value, no
 * limit, no likelihood and no marks; a hint step that was not reached leaves its members empty.
 *
 * @param sound whether all that was entered fits, so that there is nothing to look at
 * @param look where to look, as far as the hint step goes
 * @param doubt whether the place may be another one
 * @param acts what to do there
 * @param next the reading to take next, as it is typed without its value
 * @param findings what is odd about what was entered
 * @param result once it is released
 */
public record StudentSheet(
    List<Warning> cautions,
    List<Fit> fits,
    List<Row> readings,
    boolean sound,
    Optional<Look> look,
    boolean doubt,
    Highlight highlight,
    List<String> acts,
    Optional<Next> next,
    List<String> findings,
    Optional<Result> result) {

  /** A reading as the student took it, and whether it fits. {@code when}: the condition. */
  public record Row(
      String id,
      String label,
      String when,
      String typed,
      String state,
      String verdict,
      String advice) {}

  /** What a release adds. */
  public record Result(
      Points points, int wiringOf, List<Look> differences, List<Readout> readings) {
    public int readingsOf() {
      return points.of() - wiringOf;
    }
  }

  /** {@code released}: whether the teacher has released the results of the session. */
  public static StudentSheet of(
      Exercise exercise, BenchRecord record, KeptMark mark, HintStep hint, boolean released) {
    return new StudentReport(exercise, record, mark, released ? HintStep.PLACE : hint)
        .sheet(released);
  }
}
