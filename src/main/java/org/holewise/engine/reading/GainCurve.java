package org.holewise.engine.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;

/**
 * One AC voltage as a multiple of another over the frequency of the generators, each under the
 * meter that takes it, to be plotted. Immutable.
 *
 * @param points of ascending frequency
 */
public record GainCurve(List<Point> points) {
  private static final int A_DECADE = 20;
  private static final double DECIBELS = 20;

  /** A frequency (Hz) and how the two compare there (dB). */
  public record Point(double hertz, double decibels) {}

  public GainCurve {
    points = List.copyOf(points);
  }

  /**
   * The curve of an assembly, without points where nothing swings; empty where its circuit has no
   * solution.
   *
   * @param from first decade, as a power of ten (Hz)
   * @param to last decade
   */
  public static Optional<GainCurve> of(
      Assembly assembly,
      Meter meter,
      Measure.Compared compared,
      Condition condition,
      int from,
      int to) {
    Bench bench = Bench.of(assembly);
    var instrument = new AcInstrument(meter);
    return instrument
        .swing(bench, compared.of(), condition)
        .flatMap(
            above ->
                instrument
                    .swing(bench, compared.to(), condition)
                    .map(below -> along(above, below, from, to)));
  }

  private static GainCurve along(Swing above, Swing below, int from, int to) {
    var points = new ArrayList<Point>();
    for (int k = 0; k <= (to - from) * A_DECADE; k++) {
      double hertz = StrictMath.pow(10, from + (double) k / A_DECADE);
      double decibels = DECIBELS * StrictMath.log10(above.rms(hertz) / below.rms(hertz));
      if (Double.isFinite(decibels)) {
        points.add(new Point(hertz, decibels));
      }
    }
    return new GainCurve(points);
  }
}
