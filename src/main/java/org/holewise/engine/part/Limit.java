package org.holewise.engine.part;

/** What a part stands at most; going beyond is a caution. */
public sealed interface Limit {

  /** Current into a pin (A): {@code caution} should be heeded, {@code stop} destroys. */
  record Current(String pin, double caution, double stop) implements Limit {}

  /** Power turned to heat (W). */
  record Power(double watts) implements Limit {}

  /** Voltage of {@code minus} over {@code plus} (V), the wrong way round. */
  record Reverse(String plus, String minus, double volts) implements Limit {}

  /** Voltage of {@code plus} over {@code minus} (V): at most so much, and not the wrong way. */
  record Supply(String plus, String minus, double volts) implements Limit {}
}
