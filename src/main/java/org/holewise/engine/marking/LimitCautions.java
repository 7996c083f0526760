package org.holewise.engine.marking;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.part.Limit;
import org.holewise.engine.part.Part;
import org.holewise.engine.quantity.Display;
import org.holewise.engine.quantity.Unit;
import org.holewise.engine.solver.OperatingPoint;
import org.holewise.engine.solver.Point;

/** What a part bears beyond its limits at an operating point. */
final class LimitCautions {
  /** A chip's supply turned round by more than this is harmful (V; data sheets: 0.3 V). */
  private static final double TURNED = 0.3;

  private final Part part;
  private final OperatingPoint point;

  private LimitCautions(Part part, OperatingPoint point) {
    this.part = part;
    this.point = point;
  }

  static List<Caution> of(Part part, OperatingPoint point) {
    var cautions = new LimitCautions(part, point);
    return part.kind().limits(part).stream().flatMap(limit -> cautions.of(limit).stream()).toList();
  }

  private Optional<Caution> of(Limit limit) {
    if (limit instanceof Limit.Current current) {
      return current(current);
    }
    if (limit instanceof Limit.Power power) {
      return beyond("over-power", point.power(part.ref()), power.watts(), Unit.WATT);
    }
    if (limit instanceof Limit.Reverse reverse) {
      double volts = volts(reverse.minus(), reverse.plus());
      return beyond("reverse-volts", volts, reverse.volts(), Unit.VOLT);
    }
    if (limit instanceof Limit.Polarity polarity) {
      double volts = volts(polarity.minus(), polarity.plus());
      return beyond("wrong-polarity", volts, polarity.volts(), Unit.VOLT);
    }
    if (limit instanceof Limit.Supply supply) {
      double volts = volts(supply.plus(), supply.minus());
      return beyond("chip-supply-high", volts, supply.volts(), Unit.VOLT)
          .or(() -> beyond("chip-supply-reversed", -volts, TURNED, Unit.VOLT));
    }
    Limit.Volts volts = (Limit.Volts) limit;
    return beyond(
        "over-volts", Math.abs(volts(volts.plus(), volts.minus())), volts.volts(), Unit.VOLT);
  }

  private Optional<Caution> current(Limit.Current current) {
    double amps = Math.abs(point.current(part.pin(current.pin())));
    String kind = amps > current.stop() ? "far-over-limit" : "over-limit";
    return beyond(kind, amps, current.caution(), Unit.AMP);
  }

  private double volts(String plus, String minus) {
    return point.volts(new Point.AtPin(part.pin(plus)), new Point.AtPin(part.pin(minus)));
  }

  private Optional<Caution> beyond(String kind, double size, double most, Unit unit) {
    return size > most
        ? Optional.of(
            new Caution(kind, part.ref(), List.of(part.ref(), Display.reading(size, unit))))
        : Optional.empty();
  }
}
