package org.holewise.engine.solver;

import org.holewise.engine.part.Pin;

/**
 * A voltage as logic sees it: 0 where a wire just counts as low, 1 where it just counts as high.
 * Whose thresholds they are: those of the part that the pin belongs to, else of one with a pin on
 * the same wire, else of the first with logic; 30 and 70 % of the greatest voltage where there is
 * none.
 *
 * @param response of that number
 * @param undriven whether nothing drives the wire, whatever its voltage
 */
public record LogicLevel(Response response, boolean undriven) {
  private static final double LOW = 0.3;
  private static final double HIGH = 0.7;

  static LogicLevel of(OperatingPoint point, Pin pin) {
    Circuit circuit = point.circuit();
    int judge = -1;
    for (int part = 0; part < circuit.mounted.length; part++) {
      for (Stamp.Gates gates : circuit.mounted[part].stamp().gates) {
        int rank = rank(point, part, gates, pin);
        int best = judge < 0 ? 0 : rank(point, judge, gates(circuit, judge), pin);
        judge = rank > best ? part : judge;
      }
    }
    return judge < 0 ? plain(point, pin) : of(point, pin, judge, gates(circuit, judge));
  }

  private static Stamp.Gates gates(Circuit circuit, int part) {
    return circuit.mounted[part].stamp().gates.get(0);
  }

  private static int rank(OperatingPoint point, int part, Stamp.Gates gates, Pin pin) {
    if (point.circuit().plan.pinOf(part, 0).ref().equals(pin.ref())) {
      return 3;
    }
    for (int input : gates.inputs()) {
      if (point.metal(part, input) == point.metal(pin)) {
        return 2;
      }
    }
    return 1;
  }

  private static LogicLevel of(OperatingPoint point, Pin pin, int part, Stamp.Gates gates) {
    Point minus = new Point.AtPin(point.circuit().plan.pinOf(part, gates.minus()));
    double supply = point.volts(part, gates.plus()) - point.volts(part, gates.minus());
    boolean undriven = !point.driven(pin, part, gates.minus());
    return scaled(
        point.response(new Point.AtPin(pin), minus),
        gates.logic().low(supply),
        gates.logic().high(supply),
        undriven || gates.logic().dead(supply));
  }

  private static LogicLevel plain(OperatingPoint point, Pin pin) {
    double most = 0;
    for (Pin other : point.circuit().plan.pins().keySet()) {
      most = Math.max(most, point.volts(new Point.AtPin(other)));
    }
    Point at = new Point.AtPin(pin);
    Response response = point.response(at, point.circuit().reference());
    return scaled(response, LOW * most, HIGH * most, point.floating(at) || most == 0);
  }

  private static LogicLevel scaled(Response volts, double low, double high, boolean undriven) {
    double[] slopes = volts.slopes().clone();
    double span = high > low ? high - low : 1;
    for (int k = 0; k < slopes.length; k++) {
      slopes[k] /= span;
    }
    return new LogicLevel(new Response((volts.value() - low) / span, 0, slopes), undriven);
  }
}
