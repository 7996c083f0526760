package org.holewise.benchmark.finder;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import org.holewise.benchmark.finder.Visit.Value;
import org.holewise.engine.reading.Function;
import org.holewise.engine.reading.Meter;

/** What becomes of a reading that was taken wrongly. */
final class Slips {
  private Slips() {}

  static double fullScale(Meter meter, Function function, double number) {
    return meter.range(function, number).fullScale();
  }

  static Map<String, Value> slipped(
      Ailment.Slip slip, Map<String, Value> right, Meter meter, Random random) {
    Map<String, Value> read = new LinkedHashMap<>(right);
    Value value = right.get(slip.reading());
    if (value == null || !value.amount()) {
      return read;
    }
    double full = fullScale(meter, value.function(), value.number());
    double digits = meter.digits(Function.AMPS, 0);
    Value wrong =
        switch (slip.how()) {
          case NONE -> value;
          case NEGATED -> value.negated();
          case ANYTHING -> number(value, full * (2 * random.nextDouble() - 1));
          case NOTHING -> number(value, digits * (2 * random.nextDouble() - 1));
        };
    read.put(slip.reading(), wrong);
    return read;
  }

  private static Value number(Value value, double number) {
    double count = value.count();
    return new Value(Math.rint(number / count) * count, "", value.function(), count);
  }
}
