package org.holewise.engine.solver;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import org.holewise.engine.part.Part;

/**
 * Node equations of resistors and batteries, by elimination with pivots and forty digits: a second
 * opinion that shares no code with the solver. The reference is the minus of the first part.
 */
final class NodeEquations {
  private static final MathContext DIGITS = new MathContext(40);

  private final BigDecimal[][] rows;
  private final int n;

  private NodeEquations(int n) {
    this.n = n;
    rows = new BigDecimal[n][n + 1];
    for (BigDecimal[] row : rows) {
      Arrays.fill(row, BigDecimal.ZERO);
    }
  }

  /** Voltage of every net (V). */
  static double[] solve(Rows circuit) {
    int nets = circuit.netlist().nets().size();
    int sources = (int) circuit.parts().stream().filter(part -> part.kind().source()).count();
    var equations = new NodeEquations(nets + sources);
    int reference = circuit.netlist().net(circuit.parts().get(0).pin("-"));
    int[] group = new int[nets];
    Arrays.setAll(group, k -> k);
    int source = nets;
    for (Part part : circuit.parts()) {
      int a = circuit.netlist().net(part.pins().get(0));
      int b = circuit.netlist().net(part.pins().get(1));
      if (part.kind().source()) {
        equations.source(a, b, source++, part.number("volts"), part.number("internal"));
      } else {
        equations.conductance(a, b, inverse(part.number("ohms")));
      }
      int from = group[a];
      for (int k = 0; k < nets; k++) {
        group[k] = group[k] == from ? group[b] : group[k];
      }
    }
    for (int net = 0; net < nets; net++) {
      if (group[net] != group[reference]) {
        equations.conductance(net, reference, new BigDecimal("1e-9"));
      }
    }
    Arrays.fill(equations.rows[reference], BigDecimal.ZERO);
    equations.rows[reference][reference] = BigDecimal.ONE;
    return Arrays.copyOf(equations.eliminate(), nets);
  }

  private static BigDecimal inverse(double ohms) {
    return BigDecimal.ONE.divide(new BigDecimal(ohms), DIGITS);
  }

  private void add(int row, int column, BigDecimal value) {
    rows[row][column] = rows[row][column].add(value, DIGITS);
  }

  private void conductance(int a, int b, BigDecimal g) {
    add(a, a, g);
    add(b, b, g);
    add(a, b, g.negate());
    add(b, a, g.negate());
  }

  /** v(a) − v(b) = volts + internal · current into a. */
  private void source(int a, int b, int row, double volts, double internal) {
    add(a, row, BigDecimal.ONE);
    add(b, row, BigDecimal.ONE.negate());
    add(row, a, BigDecimal.ONE);
    add(row, b, BigDecimal.ONE.negate());
    add(row, row, new BigDecimal(internal).negate());
    add(row, n, new BigDecimal(volts));
  }

  private double[] eliminate() {
    for (int k = 0; k < n; k++) {
      swap(k, largest(k));
      for (int row = 0; row < n; row++) {
        if (row != k && rows[row][k].signum() != 0) {
          BigDecimal factor = rows[row][k].divide(rows[k][k], DIGITS);
          for (int column = k; column <= n; column++) {
            add(row, column, factor.multiply(rows[k][column], DIGITS).negate());
          }
        }
      }
    }
    double[] x = new double[n];
    Arrays.setAll(x, k -> rows[k][n].divide(rows[k][k], DIGITS).doubleValue());
    return x;
  }

  private int largest(int column) {
    int found = column;
    for (int row = column + 1; row < n; row++) {
      if (rows[row][column].abs().compareTo(rows[found][column].abs()) > 0) {
        found = row;
      }
    }
    return found;
  }

  private void swap(int a, int b) {
    BigDecimal[] row = rows[a];
    rows[a] = rows[b];
    rows[b] = row;
  }
}
