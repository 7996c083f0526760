package org.holewise.engine.solver;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Solves circuits for their operating point: every voltage and current that stays as it is. What
 * cannot have one is told from the graph before anything is solved. Costs some microseconds for ten
 * parts, as the cube of the nets beyond thirty.
 */
public final class OperatingPointSolver {
  private static final int QUICK = 30;
  private static final int SETTLING = 100;

  private OperatingPointSolver() {}

  /** The operating point, searched from nothing. */
  public static Outcome solve(Circuit circuit) {
    return solve(circuit, Optional.empty());
  }

  /**
   * The operating point, searched from that of a circuit of the same parts: quick where little was
   * changed.
   */
  public static Outcome solve(Circuit circuit, OperatingPoint start) {
    return circuit.shapedAs(start.circuit())
        ? start.at(circuit).orElseGet(() -> solve(circuit, Optional.of(start)))
        : solve(circuit, Optional.of(start));
  }

  /** A quick search of a circuit that is known to have a solution; empty where it takes more. */
  static Optional<Outcome> quick(Circuit circuit, Spots spots, Equations equations, double[] x) {
    var newton = new Newton(equations);
    return newton.search(x, false, QUICK)
        ? Optional.of(settled(circuit, spots, newton, x))
        : Optional.empty();
  }

  private static Outcome solve(Circuit circuit, Optional<OperatingPoint> start) {
    var spots = new Spots(circuit);
    var elements = new Elements(circuit, spots);
    var nodes = new Nodes(circuit, spots, elements);
    TreeSet<Integer> loop = new SourceLoops(nodes, elements.sources).refused(spots.count);
    if (!loop.isEmpty()) {
      return unsolvable(Unsolvable.Why.SOURCE_LOOP, nodes, spots, loop);
    }
    var cuts = new CutSets(nodes, elements);
    TreeSet<Integer> cut = cuts.refused();
    if (!cut.isEmpty()) {
      return unsolvable(Unsolvable.Why.CUT_SET, nodes, spots, cut);
    }
    var newton = new Newton(new Equations(elements, nodes));
    double[] x = new double[newton.equations.n];
    start.ifPresent(point -> point.copyTo(spots, nodes, elements, x));
    boolean found = newton.search(x, start.isEmpty(), QUICK);
    if (found || new Continuation(newton).search(x, start.isPresent())) {
      return settled(circuit, spots, newton, x);
    }
    return elements.feeds.isEmpty()
        ? unsolvable(Unsolvable.Why.NOT_CONVERGED, nodes, spots, new TreeSet<>())
        : unsolvable(Unsolvable.Why.CUT_SET, nodes, spots, cuts.all());
  }

  private static Outcome settled(Circuit circuit, Spots spots, Newton newton, double[] x) {
    settle(newton, x);
    return new OperatingPoint(circuit, spots, newton, x);
  }

  /** Where an amplifier's output would not stay, it goes to an end of its range. */
  private static void settle(Newton newton, double[] x) {
    Elements elements = newton.equations.elements;
    if (!Amplifiers.any(elements)) {
      return;
    }
    var amplifiers = new Amplifiers(elements, newton.equations.nodes);
    if (amplifiers.stays(x)) {
      return;
    }
    double[] first = x.clone();
    List<Boolean> limiting = elements.sources.stream().map(source -> source.limiting).toList();
    for (int sides : new int[] {0, -1}) {
      newton.sides = sides;
      if (newton.search(x, true, SETTLING) && amplifiers.stays(x)) {
        return;
      }
    }
    System.arraycopy(first, 0, x, 0, x.length);
    for (int k = 0; k < limiting.size(); k++) {
      elements.sources.get(k).limiting = limiting.get(k);
    }
    newton.resume(x);
  }

  private static Unsolvable unsolvable(
      Unsolvable.Why why, Nodes nodes, Spots spots, TreeSet<Integer> metal) {
    List<Integer> nets =
        IntStream.range(0, spots.nets())
            .filter(net -> metal.contains(nodes.metal(net)))
            .boxed()
            .toList();
    return new Unsolvable(why, nets);
  }
}
