package org.holewise.engine.part;

import java.util.ArrayList;
import java.util.List;

/** What a part stands at most; going beyond is a caution. */
public sealed interface Limit {

  /** Current into a pin (A): {@code caution} should be heeded, {@code stop} destroys. */
  record Current(String pin, double caution, double stop) implements Limit {}

  /** Power turned to heat (W). */
  record Power(double watts) implements Limit {}

  /** Voltage between two pins, whichever way (V). */
  record Volts(String plus, String minus, double volts) implements Limit {}

  /** Voltage between a chip's supply pins (V). */
  record Supply(String plus, String minus, double volts) implements Limit {}

  /** Voltage of {@code minus} over {@code plus} (V) that harms what must not be turned round. */
  record Polarity(String plus, String minus, double volts) implements Limit {}

  /** Voltage of {@code minus} over {@code plus} (V), the wrong way round. */
  record Reverse(String plus, String minus, double volts) implements Limit {}

  static List<Limit> and(List<Limit> some, Limit more) {
    var all = new ArrayList<>(some);
    all.add(more);
    return List.copyOf(all);
  }
}
