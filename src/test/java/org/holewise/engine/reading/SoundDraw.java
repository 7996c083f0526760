package org.holewise.engine.reading;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.netlist.Schematic;
import org.holewise.engine.quantity.Parameter;

/**
 * Readings of one sound build: true values drawn from their spreads, then a real meter's errors.
 */
public final class SoundDraw {

  /**
   * Three deviations: what lies beyond counts as a fault (JCGM 100 leaves the choice to the user).
   */
  private static final double TAIL = 0.00135;

  private SoundDraw() {}

  public static Map<String, Written> of(Exercise exercise, Meter meter, Random random) {
    Assembly assembly = Assembly.of(exercise, Schematic.netlist(exercise), Assembly.HoleNets.NONE);
    return of(assembly, meter, random);
  }

  /** The same for any assembly: what a bench with this on it would write down. */
  public static Map<String, Written> of(Assembly assembly, Meter meter, Random random) {
    Bench nominal = Bench.of(assembly);
    List<Parameter> parameters = nominal.parameters();
    double[] truth =
        parameters.stream()
            .mapToDouble(p -> p.at(TAIL + (1 - 2 * TAIL) * random.nextDouble()))
            .toArray();
    Bench bench = nominal.with(truth);
    double[] gain = new double[Function.values().length];
    for (Function function : Function.values()) {
      gain[function.ordinal()] = 1 + meter.scale(function).gain() * (2 * random.nextDouble() - 1);
    }
    Map<String, Written> written = new LinkedHashMap<>();
    var instrument = new Instrument(meter);
    for (Reading reading : assembly.exercise().readings()) {
      Forecast forecast =
          instrument
              .read(bench, reading.measure(), assembly.exercise().condition(reading.occasion()))
              .orElseThrow();
      double digits = 2 * random.nextDouble() - 1;
      if (forecast.shown(meter) instanceof Shown.Amount) {
        Function function = forecast.function();
        double read =
            forecast.value() * gain[function.ordinal()]
                + digits * meter.digits(function, forecast.value());
        double count = meter.resolution(function, read);
        written.put(reading.id(), Written.number(Math.rint(read / count) * count));
      } else if (forecast.shown(meter) instanceof Shown.Word word) {
        written.put(reading.id(), Written.text(word.word()));
      } else {
        written.put(reading.id(), Written.text("OL"));
      }
    }
    return written;
  }
}
