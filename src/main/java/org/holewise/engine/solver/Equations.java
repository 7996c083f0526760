package org.holewise.engine.solver;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;

/**
 * The equations of a circuit by modified nodal analysis (Ho, Ruehli and Brennan 1975, IEEE
 * Transactions on Circuits and Systems 22): unknowns are the voltages of the nodes, then the
 * current into the plus of every source; equations are Kirchhoff's current law at every node, then
 * the law of every source. Node k has row and column k.
 *
 * <p>The residual is summed element by element from differences of voltages, never from the matrix:
 * so 0.01 Ω beside 1 GΩ costs no digits, and a step that the matrix gets slightly wrong is put
 * right by the next.
 */
final class Equations {
  final Elements elements;
  final Nodes nodes;
  final int n;

  /** Residual: currents out of nodes (A), then volts of sources. */
  final double[] residual;

  /** Sum of the sizes of what was added up in each row. */
  final double[] size;

  final DMatrixRMaj matrix;

  /**
   * Conductance from every node to the reference (S), voltages that it pulls to, and the sources'
   * share.
   */
  double shunt;

  double[] anchor;
  double share = 1;

  Equations(Elements elements, Nodes nodes) {
    this.elements = elements;
    this.nodes = nodes;
    n = nodes.count + elements.sources.size();
    residual = new double[n];
    size = new double[n];
    anchor = new double[nodes.count];
    matrix = new DMatrixRMaj(n, n);
  }

  double volts(double[] x, int spot) {
    int node = nodes.at(spot);
    return node < 0 ? 0 : x[node];
  }

  /** Fills residual and matrix at x, the laws as they were last evaluated. */
  void assemble(double[] x) {
    Arrays.fill(residual, 0);
    Arrays.fill(size, 0);
    Arrays.fill(matrix.data, 0);
    for (Elements.Resistance r : elements.resistances) {
      add(nodes.at(r.a()), nodes.at(r.b()), r.siemens(), x);
    }
    for (int k = 0; k < elements.sources.size(); k++) {
      add(elements.sources.get(k), nodes.count + k, x);
    }
    for (Elements.Law law : elements.laws) {
      add(law, x);
    }
    for (Elements.Feed feed : elements.feeds) {
      current(nodes.at(feed.into()), -share * feed.amps());
      current(nodes.at(feed.from()), share * feed.amps());
    }
    if (shunt > 0) {
      for (int k = 0; k < nodes.count; k++) {
        current(k, shunt * (x[k] - anchor[k]));
        slope(k, k, shunt);
      }
    }
  }

  private void add(int a, int b, double g, double[] x) {
    double i = g * ((a < 0 ? 0 : x[a]) - (b < 0 ? 0 : x[b]));
    current(a, i);
    current(b, -i);
    slope(a, a, g);
    slope(b, b, g);
    slope(a, b, -g);
    slope(b, a, -g);
  }

  private void add(Elements.Source source, int row, double[] x) {
    int plus = nodes.at(source.plus);
    int minus = nodes.at(source.minus);
    current(plus, x[row]);
    current(minus, -x[row]);
    slope(plus, row, 1);
    slope(minus, row, -1);
    if (source.limiting) {
      residual[row] = x[row] + source.limit;
      size[row] = source.limit;
      slope(row, row, 1);
    } else {
      double volts = (plus < 0 ? 0 : x[plus]) - (minus < 0 ? 0 : x[minus]);
      residual[row] = volts - share * source.volts;
      size[row] = Math.abs(volts) + Math.abs(source.volts);
      slope(row, plus, 1);
      slope(row, minus, -1);
    }
  }

  private void add(Elements.Law law, double[] x) {
    int n = law.spots.length;
    for (int s = 0; s < n; s++) {
      int row = nodes.at(law.spots[s]);
      double i = law.i[s];
      for (int t = 0; t < n; t++) {
        int column = nodes.at(law.spots[t]);
        double away = (column < 0 ? 0 : x[column]) - law.v[t];
        if (away != 0) {
          i += law.dv[s * n + t] * away;
        }
        slope(row, column, law.dv[s * n + t]);
      }
      current(row, i);
    }
  }

  private void current(int row, double amps) {
    if (row >= 0) {
      residual[row] += amps;
      size[row] += Math.abs(amps);
    }
  }

  private void slope(int row, int column, double g) {
    if (row >= 0 && column >= 0) {
      matrix.data[row * n + column] += g;
    }
  }

  /**
   * Makes a singular matrix regular: a little conductance to the reference, a little resistance in
   * the sources. The residual stays as it is, so what is found then still solves the equations.
   */
  void regularise() {
    for (int k = 0; k < n; k++) {
      matrix.data[k * n + k] += k < nodes.count ? 1e-12 : -1e-6;
    }
  }
}
