package org.holewise.engine.solver;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;

/**
 * The equations of a circuit by modified nodal analysis (Ho, Ruehli and Brennan 1975, IEEE
 * Transactions on Circuits and Systems 22): unknowns are the voltages along the edges of a {@link
 * Tree}, then the current into the plus of every source; equations are Kirchhoff's current law for
 * what lies beyond every edge, then the law of every source.
 *
 * <p>The residual is summed element by element from differences of voltages, never from the matrix,
 * and an element that does not cross from one side to the other of an edge has no part in its sum:
 * so 0.01 Ω beside 1 GΩ costs no digits, and a step that the matrix gets slightly wrong is put
 * right by the next.
 */
final class Equations {
  /**
   * An exponential's rounding, as that of a voltage (V): the logarithm of a saturation current is
   * some tens, which is some volts over n·VT, and a junction's current is the difference of two
   * such terms.
   */
  private static final double EXPONENT = 2;

  final Elements elements;
  final Nodes nodes;
  final int n;

  /** Residual: currents out of what lies beyond an edge (A), then volts of sources. */
  final double[] residual;

  /** Sum of the sizes of what was added up in each row: what its rounding is a share of. */
  final double[] size;

  /** What amplifiers add to that: they are loud, and feedback keeps what they drive in place. */
  final double[] loud;

  final DMatrixRMaj matrix;

  /** An aid that the last search is without: conductance along every device (S). */
  double leak;

  /** An aid: conductance from every node (S) to the voltage of its anchor. */
  double shunt;

  final double[] anchor;

  /** An aid: the share of the sources' voltages and of the feeds. */
  double share = 1;

  private Paths paths;

  Equations(Elements elements, Nodes nodes) {
    this.elements = elements;
    this.nodes = nodes;
    n = nodes.count + elements.sources.size();
    residual = new double[n];
    size = new double[n];
    loud = new double[n];
    anchor = new double[nodes.count];
    matrix = new DMatrixRMaj(n, n);
    paths = new Paths(Tree.star(nodes.count), elements, nodes);
  }

  Tree tree() {
    return paths.tree();
  }

  /** Chooses plain nodes as unknowns. */
  void alongStar() {
    along(Tree.star(nodes.count));
  }

  /** Chooses the strongest tree, as the laws were last evaluated. */
  void alongStrongest() {
    along(Tree.strongest(Strengths.between(elements, nodes)));
  }

  void along(Tree tree) {
    paths = new Paths(tree, elements, nodes);
  }

  double volts(double[] x, int spot) {
    int node = nodes.at(spot);
    return node < 0 ? 0 : x[node];
  }

  /** Fills residual and matrix at x, the laws as they were last evaluated. */
  void assemble(double[] x) {
    Arrays.fill(residual, 0);
    Arrays.fill(size, 0);
    Arrays.fill(loud, 0);
    Arrays.fill(matrix.data, 0);
    for (int k = 0; k < paths.resistances().length; k++) {
      Elements.Resistance r = elements.resistances.get(k);
      double noise = r.siemens() * (Math.abs(volts(x, r.a())) + Math.abs(volts(x, r.b())));
      current(paths.resistances()[k], r.siemens() * over(x, r.a(), r.b()), noise);
      slope(paths.resistances()[k], paths.resistances()[k], r.siemens());
    }
    for (int k = 0; k < paths.sources().length; k++) {
      add(elements.sources.get(k), paths.sources()[k], nodes.count + k, x);
    }
    for (int k = 0; k < paths.laws().length; k++) {
      add(elements.laws.get(k), paths.laws()[k], x);
    }
    for (int k = 0; k < paths.feeds().length; k++) {
      current(paths.feeds()[k], -share * elements.feeds.get(k).amps(), 0);
    }
    if (shunt > 0) {
      for (int k = 0; k < paths.shunts().length; k++) {
        current(paths.shunts()[k], shunt * (x[k] - anchor[k]), shunt * Math.abs(x[k]));
        slope(paths.shunts()[k], paths.shunts()[k], shunt);
      }
    }
  }

  private double over(double[] x, int a, int b) {
    return volts(x, a) - volts(x, b);
  }

  private void add(Elements.Source source, int[] path, int row, double[] x) {
    current(path, x[row], 0);
    for (int edge : path) {
      matrix.data[row(edge) * n + row] += sign(edge);
    }
    if (source.limiting) {
      residual[row] = x[row] + source.limit;
      size[row] = source.limit;
      matrix.data[row * n + row] = 1;
    } else {
      double volts = over(x, source.plus, source.minus);
      residual[row] = volts - share * source.volts;
      size[row] = Math.abs(volts) + Math.abs(source.volts);
      for (int edge : path) {
        matrix.data[row * n + row(edge)] += sign(edge);
      }
    }
  }

  /** A device was evaluated at v, where it may have been held back; its tangent leads on to x. */
  private void add(Elements.Law law, int[][] paths, double[] x) {
    int terminals = law.spots.length;
    int last = terminals - 1;
    for (int s = 0; s < last; s++) {
      double i = law.i[s];
      double noise = 0;
      double exponent = law.device.exponential() ? EXPONENT : 0;
      for (int t = 0; t < last; t++) {
        double g = law.dv[s * terminals + t];
        i += g * (over(x, law.spots[t], law.spots[last]) - (law.v[t] - law.v[last]));
        noise += Math.abs(g) * (exponent + Math.abs(law.v[t]) + Math.abs(law.v[last]));
        slope(paths[s], paths[t], g);
      }
      if (leak > 0) {
        i += leak * over(x, law.spots[s], law.spots[last]);
        noise += leak * (Math.abs(law.v[s]) + Math.abs(law.v[last]));
        slope(paths[s], paths[s], leak);
      }
      current(paths[s], i, law.device.exponential() ? noise : 0);
      for (int edge : paths[s]) {
        loud[row(edge)] += law.device.exponential() ? 0 : noise;
      }
    }
  }

  /** Noise is what the rounding of the voltages makes of the current, over the rounding (A). */
  private void current(int[] path, double amps, double noise) {
    for (int edge : path) {
      residual[row(edge)] += sign(edge) * amps;
      size[row(edge)] += Math.abs(amps) + noise;
    }
  }

  private void slope(int[] rows, int[] columns, double g) {
    for (int row : rows) {
      double signed = sign(row) * g;
      int at = row(row) * n;
      for (int column : columns) {
        matrix.data[at + row(column)] += sign(column) * signed;
      }
    }
  }

  private static int row(int edge) {
    return Math.abs(edge) - 1;
  }

  private static int sign(int edge) {
    return edge > 0 ? 1 : -1;
  }

  /** Whether voltages that rounding leaves open by more than so much (V) are among the unknowns. */
  boolean open(double volts) {
    for (int k = 0; k < nodes.count; k++) {
      double holds = Math.abs(matrix.data[k * n + k]);
      if (Math.ulp(size[k]) > volts * holds && !along(k)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a source keeps the voltage along an edge, whatever else crosses it. */
  boolean along(int edge) {
    for (int k = 0; k < paths.sources().length; k++) {
      int[] path = paths.sources()[k];
      boolean same = path.length == 1 && row(path[0]) == edge;
      if (same && !elements.sources.get(k).limiting) {
        return true;
      }
    }
    return false;
  }

  /**
   * Makes a singular matrix regular: a little conductance along every edge, a little resistance in
   * the sources. The residual stays as it is, so what is found then still solves the equations.
   */
  void regularise() {
    for (int k = 0; k < n; k++) {
      if (k < nodes.count) {
        matrix.data[k * n + k] += Math.max(1e-12, 1e-13 * largest(k));
      } else if (!elements.sources.get(k - nodes.count).limiting) {
        matrix.data[k * n + k] -= 1e-6;
      }
    }
  }

  private double largest(int row) {
    double largest = 0;
    for (int k = row * n; k < (row + 1) * n; k++) {
      largest = Math.max(largest, Math.abs(matrix.data[k]));
    }
    return largest;
  }
}
