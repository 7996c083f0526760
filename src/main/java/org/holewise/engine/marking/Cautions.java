package org.holewise.engine.marking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.quantity.Display;
import org.holewise.engine.quantity.Unit;
import org.holewise.engine.reading.Assembly;
import org.holewise.engine.reading.Bench;
import org.holewise.engine.solver.OperatingPoint;
import org.holewise.engine.solver.Point;
import org.holewise.engine.solver.Unsolvable;

/**
 * What a circuit as built would do to its parts or to the person at it, in any of its conditions.
 */
final class Cautions {
  /** Extra-low voltage that deserves a word (V). */
  private static final double HIGH = 24;

  /** A source that delivers this much is as good as shorted on a breadboard (A). */
  private static final double SHORT = 1;

  /** Part of its voltage below which a source is as good as shorted. */
  private static final double COLLAPSED = 0.1;

  private Cautions() {}

  static List<Caution> of(Assembly assembly) {
    var all = new LinkedHashMap<List<String>, Caution>();
    Bench bench = Bench.of(assembly);
    double highest = 0;
    for (Condition condition : assembly.exercise().conditions()) {
      if (bench.outcome(condition) instanceof Unsolvable unsolvable) {
        add(all, new Caution("supply-shorted", "", List.of()));
        continue;
      }
      Optional<OperatingPoint> point = bench.point(condition);
      if (point.isPresent()) {
        for (Part part : assembly.exercise().parts()) {
          ofPart(part, point.get()).forEach(caution -> add(all, caution));
        }
        highest = Math.max(highest, greatest(assembly, point.get()));
      }
    }
    if (highest > HIGH + 1e-9) {
      add(all, new Caution("high-voltage", "", List.of(Display.reading(highest, Unit.VOLT))));
    }
    return List.copyOf(all.values());
  }

  // What is so in several conditions is said once, with the figures of the first.
  private static void add(Map<List<String>, Caution> all, Caution caution) {
    all.putIfAbsent(List.of(caution.kind(), caution.ref()), caution);
  }

  private static List<Caution> ofPart(Part part, OperatingPoint point) {
    var all = new ArrayList<Caution>();
    if (part.kind().source() && (delivered(part, point) >= SHORT || collapsed(part, point))) {
      all.add(new Caution("supply-shorted", part.ref(), List.of(part.ref())));
    }
    all.addAll(LimitCautions.of(part, point));
    return all;
  }

  private static double delivered(Part source, OperatingPoint point) {
    double most = 0;
    for (Pin pin : source.pins()) {
      most = Math.max(most, Math.abs(point.current(pin)));
    }
    return most;
  }

  /** Whether a current limit holds an output's voltage down to almost nothing. */
  private static boolean collapsed(Part source, OperatingPoint point) {
    return source.kind().feeds(source).stream()
        .anyMatch(
            feed ->
                Math.abs(
                        point.volts(
                            new Point.AtPin(source.pin(feed.plus())),
                            new Point.AtPin(source.pin(feed.minus()))))
                    < COLLAPSED * feed.volts());
  }

  /** Greatest difference between two nets of a circuit in any of its conditions (V). */
  static double greatest(Assembly assembly) {
    Bench bench = Bench.of(assembly);
    return assembly.exercise().conditions().stream()
        .flatMap(condition -> bench.point(condition).stream())
        .mapToDouble(point -> greatest(assembly, point))
        .max()
        .orElse(0);
  }

  private static double greatest(Assembly assembly, OperatingPoint point) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Pin pin : assembly.exercise().pins()) {
      double volts = point.volts(new Point.AtPin(pin));
      least = Math.min(least, volts);
      most = Math.max(most, volts);
    }
    return Math.max(0, most - least);
  }
}
