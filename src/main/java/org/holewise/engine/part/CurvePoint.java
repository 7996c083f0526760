package org.holewise.engine.part;

import java.util.List;
import org.holewise.engine.quantity.Unit;

/**
 * A point of a junction's curve, as an exercise gives it or a kind supplies it.
 *
 * @param volts over junction and series resistance together (V)
 * @param amps through them (A)
 * @param spread standard deviation of the voltage (V)
 */
record CurvePoint(double volts, double amps, double spread) {
  static final double LEAST_VOLTS = 0.05;
  static final double MOST_AMPS = 100;

  /** What the group says, this point where it is silent. */
  CurvePoint or(Fields group) {
    return new CurvePoint(
        group.number("volts", volts), group.number("amps", amps), group.number("spread", spread));
  }

  /** The group of fields; defaults that depend on the part are told in words only. */
  static Field group(String name, double mostVolts, String meaning) {
    return new Field.Group(
        name,
        List.of(
            Field.Number.optional(
                "volts", Unit.VOLT, LEAST_VOLTS, mostVolts, "Voltage at that current."),
            Field.Number.optional("amps", Unit.AMP, 1e-9, MOST_AMPS, "Current of that point."),
            Field.Number.optional(
                "spread", Unit.VOLT, 0, 10, "Standard deviation of the voltage.")),
        false,
        meaning);
  }
}
