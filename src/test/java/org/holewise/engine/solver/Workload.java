package org.holewise.engine.solver;

import org.ejml.data.DMatrixRMaj;

/** Circuits whose solving is timed, and what a bare solver of equations would have to do. */
public final class Workload {
  private static final int MOST_TURNS = 100;

  private Workload() {}

  /** Forty nets, the reference among them: ten lamps and diodes, and a divider of many taps. */
  public static Circuit fortyNets() {
    var rows = new StringBuilder("B1 battery n0 0 volts=12;");
    for (int k = 1; k <= 10; k++) {
      rows.append("R%d resistor n0 a%d ohms=%d;".formatted(k, k, 330 + 47 * k));
      rows.append("D%d %s a%d k%d;".formatted(k, k % 2 == 0 ? "led" : "diode", k, k));
      rows.append("R%d resistor k%d 0 ohms=%d;".formatted(k + 20, k, 100 + 10 * k));
    }
    for (int k = 1; k <= 18; k++) {
      String from = k == 1 ? "n0" : "t" + (k - 1);
      rows.append("R%d resistor %s t%d ohms=1k;".formatted(k + 40, from, k));
    }
    rows.append("R60 resistor t18 0 ohms=1k;");
    return Rows.circuit(rows.toString());
  }

  /** A ladder of so many parts: a battery, then resistors in series and across in turn. */
  public static Circuit ladder(int parts) {
    var rows = new StringBuilder("B1 battery n0 0 volts=9;");
    for (int k = 1; k < parts; k++) {
      int node = k / 2;
      rows.append(
          k % 2 == 1
              ? "R%d resistor n%d n%d ohms=1k;".formatted(k, node, node + 1)
              : "R%d resistor n%d 0 ohms=2.2k;".formatted(k, node));
    }
    return Rows.circuit(rows.toString());
  }

  /** The Jacobian at a circuit's operating point. */
  public static DMatrixRMaj jacobian(Circuit circuit) {
    Newton newton = newton(circuit);
    newton.search(new double[newton.equations.n], true, MOST_TURNS);
    return newton.equations.matrix.copy();
  }

  /** How many turns Newton's method takes from nothing. */
  public static int turns(Circuit circuit) {
    for (int most = 1; most <= MOST_TURNS; most++) {
      Newton newton = newton(circuit);
      if (newton.search(new double[newton.equations.n], true, most)) {
        return most;
      }
    }
    throw new IllegalStateException("not solved in " + MOST_TURNS + " turns");
  }

  private static Newton newton(Circuit circuit) {
    var spots = new Spots(circuit);
    var elements = new Elements(circuit, spots);
    return new Newton(new Equations(elements, new Nodes(circuit, spots, elements)));
  }
}
