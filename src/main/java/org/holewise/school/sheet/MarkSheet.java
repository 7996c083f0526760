package org.holewise.school.sheet;

import java.util.List;
import java.util.Optional;
import org.holewise.document.picture.Highlight;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.marking.Points;

/**
 * A mark as the page says it, from the first thing to the last: what to stop, what fits, the one
 * thing to look at, what to do next; then the details.
 *
 * @param look the one thing to look at; empty where there is nothing
 * @param doubt whether what was measured fits other places as well
 * @param highlight the same on the board
 */
public record MarkSheet(
    List<Warning> cautions,
    List<Fit> fits,
    Optional<Look> look,
    boolean doubt,
    Highlight highlight,
    Optional<Next> next,
    List<String> acts,
    Points points,
    int wiringOf,
    List<Look> differences,
    List<Readout> readings,
    List<Suspicion> suspects,
    List<String> findings,
    List<SweepPlot> sweeps) {

  /** {@code state}: fits, look or waits. */
  public record Fit(String state, Said said) {}

  /** A sentence, and what would do as well. */
  public record Look(String text, List<String> others) {
    static Look at(String text) {
      return new Look(text, List.of());
    }
  }

  /** The reading to take, and the line on which to type it. */
  public record Next(String text, String line) {}

  /** {@code alike}: numbers, from 1, of those that cannot be told from it, as {@code 1, 3–5}. */
  public record Suspicion(String text, Likelihood likelihood, String alike) {}

  /** The sheet of a mark as it is kept, for the exercise and the record that it was made of. */
  public static MarkSheet of(Exercise exercise, BenchRecord record, KeptMark mark) {
    return new MarkReport(exercise, record, mark).sheet();
  }

  public int readingsOf() {
    return points.of() - wiringOf;
  }
}
