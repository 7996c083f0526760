package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.holewise.engine.netlist.DisjointSets;

/** The strips of a layout: which are used, what is in them, what is joined to what. Immutable. */
final class Strips {

  /** Strips in which a pin or a link's end is, ascending. */
  final int[] used;

  /** Pins in each strip. */
  final int[][] pinsIn;

  private final Wanted wanted;
  private final Layout layout;

  /** How many pins of each used strip may want each net. */
  private final int[][] votes;

  Strips(Wanted wanted, Layout layout) {
    this.wanted = wanted;
    this.layout = layout;
    used =
        IntStream.concat(Arrays.stream(layout.pin()), Arrays.stream(layout.end()))
            .filter(strip -> strip >= 0)
            .distinct()
            .sorted()
            .toArray();
    pinsIn = pinsIn();
    votes = new int[layout.strips()][];
    for (int strip : used) {
      votes[strip] = votes(pinsIn[strip]);
    }
  }

  /** Whether more pins of a strip may want some other net than this one. */
  boolean outvoted(int strip, int net) {
    int[] own = votes[strip];
    for (int votesOfOther : own) {
      if (votesOfOther > own[net]) {
        return true;
      }
    }
    return false;
  }

  /** What links join, or links and twins, with nothing labelled. */
  Islands islands(boolean byTwins) {
    Terminals t = wanted.terminals;
    var sets = new DisjointSets(layout.strips());
    int[] end = layout.end();
    for (int i = 0; i < end.length; i += 2) {
      join(sets, end[i], end[i + 1]);
    }
    for (int[] twins : byTwins ? t.pinsOf : new int[0][]) {
      int first = -1;
      for (int pin : twins) {
        first = first < 0 ? layout.pin()[pin] : first;
        join(sets, first, layout.pin()[pin]);
      }
    }
    return new Islands(sets, used, layout.strips(), t.size.length);
  }

  private static void join(DisjointSets sets, int one, int other) {
    if (one >= 0 && other >= 0) {
      sets.union(one, other);
    }
  }

  private int[] votes(int[] pins) {
    int[] all = new int[wanted.terminals.size.length];
    for (int pin : pins) {
      int part = wanted.terminals.part(pin);
      int own = pin - wanted.terminals.firstPin[part];
      Arrays.stream(wanted.options[part])
          .mapToInt(option -> option.want()[own])
          .distinct()
          .forEach(net -> all[net]++);
    }
    return all;
  }

  private int[][] pinsIn() {
    var in = new ArrayList<List<Integer>>();
    IntStream.range(0, layout.strips()).forEach(strip -> in.add(new ArrayList<>()));
    for (int pin = 0; pin < layout.pin().length; pin++) {
      if (layout.pin()[pin] >= 0) {
        in.get(layout.pin()[pin]).add(pin);
      }
    }
    return in.stream()
        .map(pins -> pins.stream().mapToInt(Integer::intValue).toArray())
        .toArray(int[][]::new);
  }
}
