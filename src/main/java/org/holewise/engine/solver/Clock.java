package org.holewise.engine.solver;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.part.Pin;

/**
 * A wire that pulses come on: the net of a pin, held from outside at one supply pin of the clocked
 * part or the other.
 *
 * @param volts at which it is held when high, over the minus pin (V)
 */
record Clock(Circuit circuit, Point wire, Pin minus, double volts, boolean restsHigh) {

  /** Empty where no part with logic is on the wire, or its supply is off. */
  static Optional<Clock> of(Circuit circuit, Pin pin, LogicRun run) {
    Optional<LogicSenses> senses = run.now();
    if (senses.isEmpty()) {
      return Optional.empty();
    }
    OperatingPoint point = senses.get().point();
    for (int part = 0; part < circuit.mounted.length; part++) {
      for (Stamp.Gates gates : circuit.mounted[part].stamp().gates) {
        boolean own = circuit.plan.pinOf(part, 0).ref().equals(pin.ref());
        for (int input : gates.inputs()) {
          if (own || point.metal(part, input) == point.metal(pin)) {
            return clock(circuit, pin, part, gates, point);
          }
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Clock> clock(
      Circuit circuit, Pin pin, int part, Stamp.Gates gates, OperatingPoint point) {
    double minus = point.volts(part, gates.minus());
    double supply = point.volts(part, gates.plus()) - minus;
    Point wire = new Point.AtPin(pin);
    return gates.logic().dead(supply)
        ? Optional.empty()
        : Optional.of(
            new Clock(
                circuit,
                wire,
                circuit.plan.pinOf(part, gates.minus()),
                supply,
                !point.floating(wire) && point.volts(wire) - minus > supply / 2));
  }

  /** The circuit with the wire held. */
  Circuit held(boolean high) {
    return circuit.with(
        List.of(
            new Edit.Source(
                wire, new Point.AtPin(minus), high ? volts : 0, Double.POSITIVE_INFINITY)));
  }
}
