package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Whether sources alone contradict each other.
 *
 * <p>An ideal source says p = m + V of the nodes at its ends, one with a current limit p ≤ m + V,
 * since its voltage may give way. A loop of ideal sources is refused whatever it adds up to. The
 * rest are difference constraints, which contradict each other where some loop has a sum below zero
 * (Cormen, Leiserson, Rivest and Stein, Introduction to Algorithms 3e, 24.4); one of zero leaves
 * its current open and is refused as well.
 */
final class SourceLoops {
  /** Sums of voltages below this share of their sizes are zero. */
  private static final double ZERO = 1e-10;

  private record Bound(int from, int to, double volts) {}

  private final Nodes nodes;
  private final List<Elements.Source> sources;

  SourceLoops(Nodes nodes, List<Elements.Source> sources) {
    this.nodes = nodes;
    this.sources = sources;
  }

  /** Nodes of a loop that has no answer, by the spots that stand for them; empty where none has. */
  TreeSet<Integer> refused(int spots) {
    var loops = new Groups(spots);
    boolean loop = false;
    for (Elements.Source source : sources) {
      loop |= !loops.join(nodes.metal(source.plus), nodes.metal(source.minus));
    }
    if (!loop) {
      return new TreeSet<>();
    }
    TreeSet<Integer> ideal = ideal(spots);
    return ideal.isEmpty() ? contradiction(spots) : ideal;
  }

  private TreeSet<Integer> ideal(int spots) {
    var fixed = new Groups(spots);
    for (Elements.Source source : sources) {
      if (ideal(source) && !fixed.join(nodes.metal(source.plus), nodes.metal(source.minus))) {
        return grouped(fixed, nodes.metal(source.plus));
      }
    }
    return new TreeSet<>();
  }

  private static boolean ideal(Elements.Source source) {
    return source.limit == Double.POSITIVE_INFINITY;
  }

  private TreeSet<Integer> grouped(Groups groups, int spot) {
    var found = new TreeSet<Integer>();
    for (Elements.Source source : sources) {
      for (int end : new int[] {nodes.metal(source.plus), nodes.metal(source.minus)}) {
        if (groups.of(end) == groups.of(spot)) {
          found.add(end);
        }
      }
    }
    return found;
  }

  /**
   * Shortest distances by Bellman and Ford from everywhere at once; what still falls is in a loop.
   */
  private TreeSet<Integer> contradiction(int spots) {
    double slack = slack();
    List<Bound> bounds = bounds(slack);
    double[] distance = new double[spots];
    var falling = new TreeSet<Integer>();
    for (int round = 0; round <= spots; round++) {
      falling.clear();
      for (Bound bound : bounds) {
        if (distance[bound.from] + bound.volts < distance[bound.to] - slack / 1000) {
          distance[bound.to] = distance[bound.from] + bound.volts;
          falling.add(bound.from);
          falling.add(bound.to);
        }
      }
    }
    return falling;
  }

  private double slack() {
    double sum = sources.stream().mapToDouble(source -> Math.abs(source.volts)).sum();
    return ZERO * Math.max(1e-3, sum);
  }

  /** A limited source's bound is drawn a little tighter, so that a loop of zero counts as below. */
  private List<Bound> bounds(double slack) {
    var bounds = new ArrayList<Bound>();
    for (Elements.Source source : sources) {
      int plus = nodes.metal(source.plus);
      int minus = nodes.metal(source.minus);
      if (ideal(source)) {
        bounds.add(new Bound(minus, plus, source.volts));
        bounds.add(new Bound(plus, minus, -source.volts));
      } else {
        bounds.add(new Bound(minus, plus, source.volts - slack));
      }
    }
    return bounds;
  }
}
