package org.holewise.engine.wiring;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.holewise.engine.board.Build;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.netlist.AsBuilt;
import org.holewise.engine.netlist.Netlist;
import org.holewise.engine.netlist.Schematic;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * All netlists that are as good as a schematic's, by brute force: every way to exchange pins of a
 * kind, to swap two equal parts, to swap two neighbours in series, over and over until nothing new
 * comes. The oracle of the comparison's tests; for small circuits only.
 */
final class Equivalents {
  private final Exercise exercise;
  private final List<Pin> pins;
  private final Set<List<Integer>> all = new LinkedHashSet<>();
  private final ArrayDeque<int[]> open = new ArrayDeque<>();

  Equivalents(Exercise exercise) {
    this.exercise = exercise;
    pins = exercise.pins();
    Netlist wanted = Schematic.netlist(exercise);
    meet(pins.stream().mapToInt(wanted::net).toArray());
    while (!open.isEmpty()) {
      int[] nets = open.remove();
      exercise.parts().forEach(part -> exchange(nets, part));
      for (Part one : exercise.parts()) {
        for (Part other : exercise.parts()) {
          if (!one.equals(other)) {
            trade(nets, one, other);
            inSeries(nets, one, other);
          }
        }
      }
      if (all.size() > 20_000) {
        throw new IllegalStateException("too large for brute force");
      }
    }
  }

  /** Whether a build's nets are one of them; where links may not be spare, that none is. */
  boolean contains(Build build) {
    return all.contains(nets(exercise, build))
        && (exercise.allow().extraLinks()
            || IntStream.range(0, build.links().size())
                .noneMatch(link -> Labs.spare(exercise, build, link)));
  }

  /** Nets of a build's pins, numbered by their first pins, twins joined. */
  static List<Integer> nets(Exercise exercise, Build build) {
    return canonical(withTwins(exercise, built(exercise, build)));
  }

  private static int[] built(Exercise exercise, Build build) {
    var built = AsBuilt.of(build, exercise.parts());
    return exercise.pins().stream().mapToInt(built::net).toArray();
  }

  private void meet(int[] nets) {
    if (all.add(canonical(withTwins(exercise, nets)))) {
      open.add(nets);
    }
  }

  private void exchange(int[] nets, Part part) {
    for (var way : part.kind().exchanges(part.fields())) {
      int[] changed = nets.clone();
      for (Pin pin : part.pins()) {
        changed[at(pin)] = nets[at(part.pin(way.get(pin.name())))];
      }
      meet(changed);
    }
  }

  private void trade(int[] nets, Part one, Part other) {
    if (exercise.allow().equalParts() && one.alike(other)) {
      int[] changed = nets.clone();
      for (Pin pin : one.pins()) {
        int a = at(pin);
        int b = at(other.pin(pin.name()));
        changed[a] = nets[b];
        changed[b] = nets[a];
      }
      meet(changed);
    }
  }

  /** one between a and m, other between m and b: other between a and m, one between m and b. */
  private void inSeries(int[] nets, Part one, Part other) {
    if (!exercise.allow().seriesOrder() || !passes(one) || !passes(other)) {
      return;
    }
    int[] joined = withTwins(exercise, nets);
    for (List<Integer> oneIn : ends(one)) {
      for (List<Integer> otherIn : ends(other)) {
        List<Integer> oneOut = rest(one, oneIn);
        List<Integer> otherOut = rest(other, otherIn);
        int a = joined[oneIn.get(0)];
        int m = joined[oneOut.get(0)];
        int b = joined[otherOut.get(0)];
        if (joined[otherIn.get(0)] == m && a != m && b != m && terminalsOn(joined, m) == 2) {
          int[] changed = joined.clone();
          otherIn.forEach(pin -> changed[pin] = a);
          otherOut.forEach(pin -> changed[pin] = m);
          oneIn.forEach(pin -> changed[pin] = m);
          oneOut.forEach(pin -> changed[pin] = b);
          meet(changed);
        }
      }
    }
  }

  private boolean passes(Part part) {
    return !part.kind().source() && ends(part).size() == 2;
  }

  private List<Integer> rest(Part part, List<Integer> end) {
    return ends(part).stream().filter(other -> !other.equals(end)).findFirst().orElseThrow();
  }

  private List<List<Integer>> ends(Part part) {
    return ends(exercise, part);
  }

  /** The pins of each terminal. */
  private static List<List<Integer>> ends(Exercise exercise, Part part) {
    var pins = exercise.pins();
    var ends = new ArrayList<List<Integer>>();
    var seen = new LinkedHashSet<Pin>();
    for (Pin pin : part.pins()) {
      if (seen.add(pin)) {
        var group = new ArrayList<>(List.of(pins.indexOf(pin)));
        for (var twins : part.kind().twins(part.fields())) {
          if (twins.contains(pin.name())) {
            for (String twin : twins) {
              if (seen.add(part.pin(twin))) {
                group.add(pins.indexOf(part.pin(twin)));
              }
            }
          }
        }
        ends.add(group);
      }
    }
    return ends;
  }

  private int terminalsOn(int[] nets, int net) {
    int count = 0;
    for (Part part : exercise.parts()) {
      for (var end : ends(part)) {
        count += nets[end.get(0)] == net ? 1 : 0;
      }
    }
    return count;
  }

  private static int[] withTwins(Exercise exercise, int[] nets) {
    int[] joined = nets.clone();
    for (Part part : exercise.parts()) {
      for (var end : ends(exercise, part)) {
        for (int pin : end) {
          int from = joined[pin];
          int to = joined[end.get(0)];
          for (int i = 0; i < joined.length; i++) {
            joined[i] = joined[i] == from ? to : joined[i];
          }
        }
      }
    }
    return joined;
  }

  /** Nets numbered by their first pins. */
  private static List<Integer> canonical(int[] nets) {
    Map<Integer, Integer> number = new LinkedHashMap<>();
    var canonical = new ArrayList<Integer>();
    for (int net : nets) {
      number.putIfAbsent(net, number.size());
      canonical.add(number.get(net));
    }
    return canonical;
  }

  private int at(Pin pin) {
    return pins.indexOf(pin);
  }
}
