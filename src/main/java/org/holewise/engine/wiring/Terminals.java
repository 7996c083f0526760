package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.netlist.DisjointSets;
import org.holewise.engine.netlist.Netlist;
import org.holewise.engine.netlist.Schematic;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * Pins, terminals and wanted nets of an exercise as numbers. A terminal is one piece of metal of a
 * part: a pin, or pins that are twins. Wanted nets that twins join are one. Immutable.
 */
final class Terminals {
  final List<Part> parts;
  final List<Pin> pins;

  /** First pin of each part, then the number of pins. */
  final int[] firstPin;

  /** Terminal of each pin. */
  final int[] terminal;

  /** Pins of each terminal. */
  final int[][] pinsOf;

  /** Wanted net of each pin. */
  final int[] net;

  /** Name of each wanted net. */
  final List<String> names;

  /** How many terminals each wanted net joins. */
  final int[] size;

  Terminals(Exercise exercise) {
    parts = exercise.parts();
    pins = exercise.pins();
    firstPin = new int[parts.size() + 1];
    for (int i = 0; i < parts.size(); i++) {
      firstPin[i + 1] = firstPin[i] + parts.get(i).pins().size();
    }
    var metal = metal();
    terminal = dense(metal, pins.size());
    pinsOf = new int[1 + last(terminal)][];
    for (int t = 0; t < pinsOf.length; t++) {
      pinsOf[t] = members(terminal, t);
    }
    Netlist wanted = Schematic.netlist(exercise);
    var joined = new DisjointSets(wanted.nets().size());
    for (int pin = 0; pin < pins.size(); pin++) {
      joined.union(wanted.net(pins.get(pin)), wanted.net(pins.get(pinsOf[terminal[pin]][0])));
    }
    int[] netOf = dense(joined, wanted.nets().size());
    net = pins.stream().mapToInt(pin -> netOf[wanted.net(pin)]).toArray();
    names = new ArrayList<>();
    for (int i = 0; i < netOf.length; i++) {
      if (netOf[i] == names.size()) {
        names.add(wanted.nets().get(i).name());
      }
    }
    size = new int[names.size()];
    for (int[] own : pinsOf) {
      size[net[own[0]]]++;
    }
  }

  /** Terminals of a part, in the order of its pins. */
  int[] terminals(int part) {
    int first = terminal[firstPin[part]];
    int last = first;
    for (int pin = firstPin[part]; pin < firstPin[part + 1]; pin++) {
      last = Math.max(last, terminal[pin]);
    }
    int[] own = new int[last - first + 1];
    for (int i = 0; i < own.length; i++) {
      own[i] = first + i;
    }
    return own;
  }

  int part(int pin) {
    int part = 0;
    while (firstPin[part + 1] <= pin) {
      part++;
    }
    return part;
  }

  private DisjointSets metal() {
    var sets = new DisjointSets(pins.size());
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      var own = part.kind().pins(part.fields());
      for (var group : part.kind().twins(part.fields())) {
        for (String pin : group) {
          sets.union(firstPin[i] + own.indexOf(pin), firstPin[i] + own.indexOf(group.get(0)));
        }
      }
    }
    return sets;
  }

  /** Numbers the sets by their first members. */
  private static int[] dense(DisjointSets sets, int n) {
    int[] number = new int[n];
    int[] numberOf = new int[n];
    int next = 0;
    for (int i = 0; i < n; i++) {
      int root = sets.find(i);
      if (numberOf[root] == 0) {
        numberOf[root] = ++next;
      }
      number[i] = numberOf[root] - 1;
    }
    return number;
  }

  private static int last(int[] numbers) {
    int last = -1;
    for (int number : numbers) {
      last = Math.max(last, number);
    }
    return last;
  }

  private static int[] members(int[] setOf, int set) {
    return java.util.stream.IntStream.range(0, setOf.length).filter(i -> setOf[i] == set).toArray();
  }
}
