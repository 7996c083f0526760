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
    int from = frequencies(readings).mapToInt(ComparedGain::below).min().orElse(LOWEST);
    int to = frequencies(readings).mapToInt(ComparedGain::above).max().orElse(HIGHEST);
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

  /** The decade below a frequency, the usual lowest at most. */
  private static int below(double hertz) {
    return Math.min(LOWEST, (int) Math.ceil(StrictMath.log10(hertz)) - 1);
  }

  /** The decade above a frequency, the usual highest at least. */
  private static int above(double hertz) {
    return Math.max(HIGHEST, (int) Math.floor(StrictMath.log10(hertz)) + 1);
  }
}
