package org.holewise.engine.solver;

/**
 * What the logic of a circuit finds at its pins while its outputs drive so: voltages over the minus
 * pin of each part, its supply, and which inputs nothing drives. Not changed once made.
 */
@SuppressWarnings("ArrayRecordComponent")
record LogicSenses(double[][] volts, double[] supply, boolean[][] undriven, OperatingPoint point) {

  static LogicSenses of(Circuit circuit, OperatingPoint point) {
    int parts = circuit.mounted.length;
    var senses =
        new LogicSenses(new double[parts][0], new double[parts], new boolean[parts][0], point);
    for (int part = 0; part < parts; part++) {
      for (Stamp.Gates gates : circuit.mounted[part].stamp().gates) {
        senses.sense(part, gates);
      }
    }
    return senses;
  }

  private void sense(int part, Stamp.Gates gates) {
    int count = gates.inputs().length;
    volts[part] = new double[count];
    undriven[part] = new boolean[count];
    double minus = point.volts(part, gates.minus());
    supply[part] = point.volts(part, gates.plus()) - minus;
    for (int k = 0; k < count; k++) {
      int pin = gates.inputs()[k];
      volts[part][k] = point.volts(part, pin) - minus;
      undriven[part][k] = !point.driven(part, pin, gates.minus());
    }
  }
}
