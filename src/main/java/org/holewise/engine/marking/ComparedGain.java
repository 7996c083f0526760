package org.holewise.engine.marking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Occasion;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.reading.Assembly;
import org.holewise.engine.reading.GainCurve;
import org.holewise.engine.reading.Meter;
import org.holewise.engine.reading.Meters;

/**
 * What an exercise compares over frequency: the curve of the schematic, that of the build, and the
 * readings that lie on it.
 *
 * @param readings that compare the same voltages in the same condition
 * @param built empty where the build does the same as the schematic
 */
public record ComparedGain(List<Reading> readings, GainCurve wanted, Optional<GainCurve> built) {
  /** Where no reading says at which frequencies to look (powers of ten, Hz). */
  private static final int LOWEST = 1;

  private static final int HIGHEST = 5;

  /** What readings have in common that lie on one curve. */
  private record Curve(Measure.Pair of, Measure.Pair to, String when) {}

  /** One for each pair of voltages that readings compare, in the order of the readings. */
  public static List<ComparedGain> of(Exercise exercise, BenchRecord record) {
    Map<Curve, List<Reading>> together = new LinkedHashMap<>();
    for (Reading reading : exercise.readings()) {
      if (reading.measure() instanceof Measure.Compared compared) {
        var same = new Curve(compared.of(), compared.to(), reading.when());
        together.computeIfAbsent(same, key -> new ArrayList<>()).add(reading);
      }
    }
    Optional<Meter> meter = Meters.named(record.meter());
    return together.values().stream()
        .flatMap(readings -> meter.flatMap(by -> of(exercise, record, by, readings)).stream())
        .toList();
  }

  private static Optional<ComparedGain> of(
      Exercise exercise, BenchRecord record, Meter meter, List<Reading> readings) {
    var compared = (Measure.Compared) readings.get(0).measure();
    Condition condition = exercise.condition(Occasion.in(readings.get(0).when()));
    double[] hertz = frequencies(readings).toArray();
    int from = decade(DoubleStream.of(hertz).min().orElse(Double.NaN), -1, LOWEST);
    int to = decade(DoubleStream.of(hertz).max().orElse(Double.NaN), 1, HIGHEST);
    Assembly wanted = Marking.wanted(exercise);
    Assembly built = Marking.asBuilt(exercise, record);
    return GainCurve.of(wanted, meter, compared, condition, from, to)
        .filter(curve -> !curve.points().isEmpty())
        .map(
            curve ->
                new ComparedGain(
                    List.copyOf(readings),
                    curve,
                    built.same(wanted)
                        ? Optional.empty()
                        : GainCurve.of(built, meter, compared, condition, from, to)
                            .or(() -> Optional.of(new GainCurve(List.of())))));
  }

  private static DoubleStream frequencies(List<Reading> readings) {
    return readings.stream().flatMapToDouble(reading -> reading.hertz().stream());
  }

  /** The decade beyond a frequency; a usual one where that is not known. */
  private static int decade(double hertz, int way, int usual) {
    if (Double.isNaN(hertz)) {
      return usual;
    }
    double power = StrictMath.log10(hertz);
    return way < 0
        ? Math.min(usual, (int) Math.ceil(power) - 1)
        : Math.max(usual, (int) Math.floor(power) + 1);
  }
}
