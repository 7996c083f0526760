package org.holewise.engine.solver;

import java.util.Arrays;
import java.util.List;
import org.holewise.engine.part.Part;

/**
 * Whether the sources of a circuit contradict each other, by all shortest paths (Floyd 1962): a
 * second way to what the solver decides. An ideal source binds its ends both ways, one with a limit
 * only upwards; a loop of bounds must sum to more than zero, and a loop of ideal sources is refused
 * anyhow.
 */
final class SourceGraph {
  private final double[][] bound;
  private boolean idealLoop;

  private SourceGraph(int nets) {
    bound = new double[nets][nets];
    for (double[] row : bound) {
      Arrays.fill(row, Double.POSITIVE_INFINITY);
    }
  }

  /**
   * Whether there is no operating point.
   *
   * @param metal for every net the one that stands for what is joined to it
   */
  static boolean contradicts(Rows rows, int[] metal) {
    var graph = new SourceGraph(metal.length);
    int[] ideal = new int[metal.length];
    Arrays.setAll(ideal, k -> k);
    List<Part> sources = rows.parts().stream().filter(part -> part.kind().source()).toList();
    for (Part source : sources) {
      if (source.fields().number("internal", 0) == 0) {
        int plus = metal[rows.netlist().net(source.pin("+"))];
        int minus = metal[rows.netlist().net(source.pin("-"))];
        graph.add(source, plus, minus, ideal);
      }
    }
    return graph.idealLoop || graph.fallingLoop();
  }

  private void add(Part source, int plus, int minus, int[] ideal) {
    double volts = source.fields().number("volts").orElseThrow();
    bound[minus][plus] = Math.min(bound[minus][plus], volts);
    if (source.fields().has("limit")) {
      return;
    }
    bound[plus][minus] = Math.min(bound[plus][minus], -volts);
    idealLoop |= ideal[plus] == ideal[minus];
    int from = ideal[plus];
    int to = ideal[minus];
    for (int k = 0; k < ideal.length; k++) {
      ideal[k] = ideal[k] == from ? to : ideal[k];
    }
  }

  /** Whether some way from a node back to itself sums to less than zero. */
  private boolean fallingLoop() {
    int n = bound.length;
    for (int via = 0; via < n; via++) {
      for (int from = 0; from < n; from++) {
        for (int to = 0; to < n; to++) {
          bound[from][to] = Math.min(bound[from][to], bound[from][via] + bound[via][to]);
        }
      }
    }
    for (int k = 0; k < n; k++) {
      if (bound[k][k] < -1e-9) {
        return true;
      }
    }
    return false;
  }
}
