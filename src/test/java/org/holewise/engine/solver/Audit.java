package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.holewise.engine.netlist.Netlist;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * Kirchhoff's current law, checked from voltages alone by laws of its own: written from the
 * published equations, not from the code that is tested. Only the current of an ideal source, which
 * no voltage tells, is taken from the solver; that the source keeps its voltage, or its limit, is
 * checked too.
 */
final class Audit {
  private static final double THERMAL = 1.380649e-23 * 298.15 / 1.602176634e-19;

  /** Currents that leave each group of joined nets (A). */
  private final Map<Integer, List<Double>> leaving = new TreeMap<>();

  private double islandWatts;
  private final List<String> complaints = new ArrayList<>();
  private final Rows rows;
  private final Netlist netlist;
  private final OperatingPoint point;
  private final int[] metal;
  private final int[] paths;

  Audit(Rows rows, OperatingPoint point) {
    this.rows = rows;
    this.point = point;
    netlist = rows.netlist();
    metal = Metal.of(rows);
    paths = metal.clone();
    rows.parts().forEach(this::connect);
    rows.parts().forEach(this::add);
    islands();
  }

  /** Heat in the 1 GΩ of floating nets (W). */
  double islandWatts() {
    return islandWatts;
  }

  /** What does not hold, in words; empty where all does. */
  List<String> complaints() {
    leaving.forEach(
        (group, amps) -> {
          double sum = amps.stream().mapToDouble(Double::doubleValue).sum();
          double most = amps.stream().mapToDouble(Math::abs).max().orElse(0);
          if (!(Math.abs(sum) <= 1e-9 + 1e-6 * most)) {
            complaints.add("net " + group + ": " + sum + " A of " + most);
          }
        });
    return complaints;
  }

  private static void unite(int[] groups, int a, int b) {
    int from = groups[b];
    int to = groups[a];
    for (int k = 0; k < groups.length; k++) {
      groups[k] = groups[k] == from ? to : groups[k];
    }
  }

  private int net(Part part, String pin) {
    return netlist.net(part.pin(pin));
  }

  private void connect(Part part) {
    if (part.kind().name().equals("switch") || part.kind().name().equals("button")) {
      return;
    }
    for (Pin pin : part.pins()) {
      unite(paths, metal[netlist.net(part.pins().get(0))], metal[netlist.net(pin)]);
    }
  }

  private double volts(Part part, String plus, String minus) {
    return point.volts(new Point.AtPin(part.pin(plus)), new Point.AtPin(part.pin(minus)));
  }

  private void leaves(Part part, String pin, double amps) {
    leaving.computeIfAbsent(metal[net(part, pin)], k -> new ArrayList<>()).add(amps);
  }

  private void through(Part part, String from, String to, double amps) {
    leaves(part, from, amps);
    leaves(part, to, -amps);
  }

  private void add(Part part) {
    Fields f = part.fields();
    switch (part.kind().name()) {
      case "resistor" ->
          through(part, "1", "2", volts(part, "1", "2") / f.number("ohms").orElseThrow());
      case "potentiometer" -> pot(part, f.number("ohms").orElseThrow(), f.number("set", 0.5));
      case "battery" -> battery(part, f.number("volts").orElseThrow(), f.number("internal", 0));
      case "supply" -> supply(part, f.number("volts").orElseThrow());
      case "diode" -> diode(part);
      case "led" -> junction(part, led(f.text("colour").orElseThrow()), 0.02, 2, 3, "a", "k");
      case "zener" -> {
        junction(part, 0.62, 1e-3, 1.6, 0.6, "a", "k");
        double breakdown = f.group("breakdown").number("volts").orElseThrow();
        junction(part, breakdown, 5e-3, 1.6, 0, "k", "a");
      }
      case "npn" -> bipolar(part, 1, f.number("gain").orElseThrow());
      case "pnp" -> bipolar(part, -1, f.number("gain").orElseThrow());
      default -> {
        // joined already, or open
      }
    }
  }

  private void pot(Part part, double ohms, double set) {
    if (set > 0) {
      through(part, "1", "w", volts(part, "1", "w") / (ohms * set));
    }
    if (set < 1) {
      through(part, "w", "2", volts(part, "w", "2") / (ohms * (1 - set)));
    }
  }

  private void battery(Part part, double volts, double internal) {
    double over = volts(part, "+", "-");
    if (internal > 0) {
      through(part, "+", "-", (over - volts) / internal);
      return;
    }
    through(part, "+", "-", point.current(part.pin("+")));
    if (!(Math.abs(over - volts) <= 1e-12 * volts)) {
      complaints.add(part.ref() + " gives " + over + " V for " + volts);
    }
  }

  private void supply(Part part, double volts) {
    double over = volts(part, "+", "-");
    double amps = point.current(part.pin("+"));
    double limit = part.fields().number("limit", Double.POSITIVE_INFINITY);
    through(part, "+", "-", amps);
    boolean keeps = Math.abs(over - volts) <= 1e-11 * volts && -amps <= limit * (1 + 1e-11);
    boolean gives = over <= volts * (1 + 1e-11) && Math.abs(-amps - limit) <= 1e-11 * limit;
    if (!keeps && !gives) {
      complaints.add(part.ref() + " gives " + over + " V at " + -amps + " A");
    }
  }

  private void diode(Part part) {
    if (part.fields().text("type").orElseThrow().equals("1N4001")) {
      junction(part, 0.7, 0.01, 1.8, 0.05, "a", "k");
    } else {
      junction(part, 0.62, 1e-3, 1.6, 0.6, "a", "k");
    }
  }

  private static double led(String colour) {
    return switch (colour) {
      case "red" -> 2.0;
      case "green" -> 2.2;
      default -> 3.2;
    };
  }

  private void junction(
      Part part, double volts, double amps, double n, double series, String in, String out) {
    var curve = new Curve(n * THERMAL, series, amps, (volts - amps * series) / (n * THERMAL));
    through(part, in, out, curve.amps(volts(part, in, out)));
  }

  /** IS·(exp(u/a) − 1) written about the fitted point, u over the junction alone, by bisection. */
  private record Curve(double a, double series, double amps, double at) {
    double amps(double v) {
      if (series == 0) {
        return inner(v);
      }
      double low = Math.min(v, 0);
      double high = Math.max(v, 0);
      for (int k = 0; k < 200 && low < high; k++) {
        double middle = low + (high - low) / 2;
        if (middle + series * inner(middle) < v) {
          low = middle;
        } else {
          high = middle;
        }
        if (middle == low && middle == high) {
          break;
        }
      }
      return v > 0 && v > low + a ? (v - low) / series : inner(low);
    }

    /** Beyond 1000 A the exponential goes on as its tangent. */
    private double inner(double u) {
      double top = Math.log(1000 / amps);
      double y = u / a - at;
      double rise = y <= top ? Math.exp(y) : 1000 / amps * (1 + y - top);
      return amps * (rise - Math.exp(-at)) / -Math.expm1(-at);
    }
  }

  /** Ebers and Moll, transport form. */
  private void bipolar(Part part, int sign, double gain) {
    double be = sign * volts(part, "b", "e");
    double bc = sign * volts(part, "b", "c");
    double forward = transport(be);
    double reverse = transport(bc);
    double collector = forward - reverse - reverse / 4;
    double base = forward / gain + reverse / 4;
    leaves(part, "c", sign * collector);
    leaves(part, "b", sign * base);
    leaves(part, "e", -sign * (collector + base));
  }

  private static double transport(double volts) {
    double last = THERMAL * Math.log(1e3 / 1e-14);
    return volts <= last
        ? 1e-14 * Math.expm1(volts / THERMAL)
        : 1e3 * (1 + (volts - last) / THERMAL);
  }

  /** A group of nets without a path to the reference has 1 GΩ to it. */
  private void islands() {
    Map<Integer, Integer> first = new HashMap<>();
    int reference = reference();
    for (int net = 0; net < metal.length; net++) {
      boolean floats = paths[net] != paths[reference] && metal[net] != metal[reference];
      if (floats && first.putIfAbsent(metal[net], net) == null) {
        double volts = point.volts(new Point.AtNet(net), new Point.AtNet(reference));
        leaving.computeIfAbsent(metal[net], k -> new ArrayList<>()).add(volts / 1e9);
        leaving.computeIfAbsent(metal[reference], k -> new ArrayList<>()).add(-volts / 1e9);
        islandWatts += volts * volts / 1e9;
      }
      if (floats != point.floating(new Point.AtNet(net))) {
        complaints.add("net " + net + " floats: " + floats);
      }
    }
  }

  private int reference() {
    Part source = rows.parts().get(0);
    return net(source, "-");
  }
}
