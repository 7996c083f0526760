package org.holewise.benchmark.finder;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.reading.Bench;
import org.holewise.engine.reading.Forecast;
import org.holewise.engine.reading.Function;
import org.holewise.engine.reading.Instrument;
import org.holewise.engine.reading.Meter;
import org.holewise.engine.reading.Meters;
import org.holewise.engine.reading.Shown;

/** One real bench with one real meter: true values and the meter's gains are drawn once. */
final class Visit {
  /** Beyond its law's ends a drawn value says nothing more. */
  private static final double INSIDE = 1e-4;

  private final Truth truth;
  private final Meter meter;
  private final Bench bench;
  private final double[] gain = new double[Function.values().length];
  private final Random random;

  /** What a reading came out as: a number (SI), or a word. */
  record Value(double number, String word, Function function, double count) {
    boolean amount() {
      return word.isEmpty();
    }

    Value negated() {
      return new Value(-number, word, function, count);
    }

    /** As a student writes it, to the meter's last digit. */
    String text() {
      if (!amount()) {
        return word;
      }
      if (function == Function.OHMS) {
        return String.format(Locale.ROOT, count < 1 ? "%.1f ohm" : "%.0f ohm", number);
      }
      boolean milli = function == Function.AMPS ? count < 1e-3 : count < 1e-3 - 1e-12;
      double scale = milli ? 1e3 : 1;
      int places = (int) Math.max(0, Math.ceil(-Math.log10(count * scale) - 1e-9));
      String unit = (milli ? "m" : "") + (function == Function.AMPS ? "A" : "V");
      return String.format(Locale.ROOT, "%." + places + "f %s", number * scale, unit);
    }
  }

  Visit(Truth truth, Random random) {
    this.truth = truth;
    this.random = random;
    meter = Meters.named(truth.parts().meter()).orElseThrow();
    Bench nominal = Bench.of(truth.assembly());
    List<Parameter> parameters = nominal.parameters();
    double[] values = new double[parameters.size()];
    for (int k = 0; k < values.length; k++) {
      values[k] = parameters.get(k).at(INSIDE + (1 - 2 * INSIDE) * random.nextDouble());
    }
    bench = nominal.with(values);
    for (Function function : Function.values()) {
      gain[function.ordinal()] = 1 + meter.scale(function).gain() * (2 * random.nextDouble() - 1);
    }
  }

  /** All readings of the exercise by id, those left out that have no answer. */
  Map<String, Value> readings() {
    Map<String, Value> all = new LinkedHashMap<>();
    for (Reading reading : truth.parts().readings()) {
      read(reading.measure(), truth.parts().condition(reading.occasion()))
          .ifPresent(value -> all.put(reading.id(), value));
    }
    return all;
  }

  Optional<Value> read(Measure measure, Condition condition) {
    return truth
        .really(measure)
        .flatMap(really -> new Instrument(meter).read(bench, really, condition))
        .map(this::shown);
  }

  private Value shown(Forecast forecast) {
    Shown shown = forecast.shown(meter);
    Function function = forecast.function();
    if (shown instanceof Shown.Word said) {
      return new Value(0, said.word(), function, 1);
    }
    if (!(shown instanceof Shown.Amount amount)) {
      return new Value(0, "OL", function, 1);
    }
    double count = meter.resolution(function, amount.value());
    double digits = meter.digits(function, amount.value()) * (2 * random.nextDouble() - 1);
    double read = amount.value() * gain[function.ordinal()] + digits;
    return new Value(Math.rint(read / count) * count, "", function, count);
  }
}
