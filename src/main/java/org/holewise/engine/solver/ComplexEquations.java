package org.holewise.engine.solver;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;
import org.ejml.data.DMatrixRMaj;

/**
 * The equations of a circuit at one frequency about its operating point, with their factors: the
 * Jacobian, with jωC for every capacitance and −jωL in the row of every inductance (Ho, Ruehli and
 * Brennan 1975). Complex numbers are pairs of real ones, all real parts first.
 *
 * <p>Unknowns are the voltages along the strongest {@link Tree} at that frequency, so that what
 * hangs on blocked parts alone swings by what they and their capacitances make of it; outside of
 * this class everything is by node.
 */
final class ComplexEquations {
  final Equations equations;
  final double omega;

  /** Real and imaginary parts together. */
  final int n;

  private final Factors factors;

  private ComplexEquations(Equations equations, double omega) {
    this.equations = equations;
    this.omega = omega;
    n = 2 * equations.n;
    factors = new Factors(n);
  }

  /** The equations about a point, the laws as they were evaluated there; empty where singular. */
  static Optional<ComplexEquations> about(
      Elements elements, Nodes nodes, double[] x, double omega) {
    var equations = new Equations(elements, nodes);
    equations.along(Tree.strongest(Strengths.at(omega, elements, nodes)));
    equations.assemble(x);
    var complex = new ComplexEquations(equations, omega);
    return complex.factors.of(complex.matrix()) ? Optional.of(complex) : Optional.empty();
  }

  /** Real parts in both diagonal blocks, imaginary ones beside them: [G, −B; B, G]. */
  private DMatrixRMaj matrix() {
    int half = equations.n;
    var matrix = new DMatrixRMaj(n, n);
    for (int row = 0; row < half; row++) {
      System.arraycopy(equations.matrix.data, row * half, matrix.data, row * n, half);
      System.arraycopy(
          equations.matrix.data, row * half, matrix.data, (row + half) * n + half, half);
    }
    for (Elements.Capacitance c : equations.elements.capacitances) {
      int[] path = equations.tree().path(equations.nodes.at(c.a()), equations.nodes.at(c.b()));
      for (int one : path) {
        for (int other : path) {
          double sign = Integer.signum(one) * Integer.signum(other);
          add(matrix, Math.abs(one) - 1, Math.abs(other) - 1, sign * omega * c.farads());
        }
      }
    }
    for (int k = 0; k < equations.elements.sources.size(); k++) {
      int row = equations.nodes.count + k;
      add(matrix, row, row, -omega * equations.elements.sources.get(k).henries);
    }
    return matrix;
  }

  private void add(DMatrixRMaj matrix, int row, int column, double imaginary) {
    int half = equations.n;
    matrix.data[row * n + column + half] -= imaginary;
    matrix.data[(row + half) * n + column] += imaginary;
  }

  /** What currents into nodes and voltages of sources make of the unknowns, in place. */
  void solve(double[] b) {
    halves(b, equations.tree()::gather);
    factors.solve(b);
    halves(b, equations.tree()::sum);
  }

  /** λ of Aᵀ·λ = c for a real c. */
  double[] adjoint(double[] c) {
    double[] gathered = c.clone();
    halves(gathered, equations.tree()::gather);
    double[] lambda = factors.solveTransposed(gathered);
    halves(lambda, equations.tree()::sum);
    // The transposed real matrix is that of the conjugate: its solution is λ conjugate.
    for (int k = n / 2; k < n; k++) {
      lambda[k] = -lambda[k];
    }
    return lambda;
  }

  private void halves(double[] of, Consumer<double[]> act) {
    for (int from = 0; from < n; from += n / 2) {
      double[] half = Arrays.copyOfRange(of, from, from + n / 2);
      act.accept(half);
      System.arraycopy(half, 0, of, from, n / 2);
    }
  }

  /** The real difference of two spots' voltages, as a row. */
  double[] between(int plus, int minus) {
    double[] c = new double[n];
    put(c, plus, 1);
    put(c, minus, -1);
    return c;
  }

  private void put(double[] c, int spot, double value) {
    int node = equations.nodes.at(spot);
    if (node >= 0) {
      c[node] += value;
    }
  }

  /** Row of a source, and place of its current among the unknowns. */
  int row(int source) {
    return equations.nodes.count + source;
  }
}
