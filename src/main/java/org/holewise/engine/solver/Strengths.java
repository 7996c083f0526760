package org.holewise.engine.solver;

/** How well the elements hold pairs of nodes together, for {@link Tree#strongest}. */
final class Strengths {
  private final Nodes nodes;
  private final double[][] between;

  private Strengths(Nodes nodes) {
    this.nodes = nodes;
    between = new double[nodes.count + 1][nodes.count + 1];
  }

  /**
   * The largest conductance between every two nodes (S), the reference last; a source that keeps
   * its voltage beats all. Of a device's two slopes between terminals the smaller counts: what a
   * transistor controls it does not hold.
   */
  static double[][] between(Elements elements, Nodes nodes) {
    return at(0, elements, nodes);
  }

  /** The same of what swings, capacitances among it and inductances by what they hold. */
  static double[][] at(double omega, Elements elements, Nodes nodes) {
    var strengths = new Strengths(nodes);
    for (Elements.Capacitance c : elements.capacitances) {
      strengths.add(c.a(), c.b(), omega * c.farads());
    }
    for (Elements.Resistance r : elements.resistances) {
      strengths.add(r.a(), r.b(), r.siemens());
    }
    for (Elements.Source s : elements.sources) {
      double holds = Math.min(1 / (omega * s.henries), Double.MAX_VALUE);
      strengths.add(s.plus, s.minus, s.limiting ? 0 : holds);
    }
    elements.laws.forEach(strengths::add);
    return strengths.between;
  }

  private void add(Elements.Law law) {
    int n = law.spots.length;
    for (int s = 0; s < n; s++) {
      for (int t = 0; t < s; t++) {
        double smaller = Math.min(Math.abs(law.dv[s * n + t]), Math.abs(law.dv[t * n + s]));
        add(law.spots[s], law.spots[t], smaller);
      }
    }
  }

  private void add(int a, int b, double siemens) {
    int row = nodes.at(a) < 0 ? nodes.count : nodes.at(a);
    int column = nodes.at(b) < 0 ? nodes.count : nodes.at(b);
    if (siemens > between[row][column]) {
      between[row][column] = siemens;
      between[column][row] = siemens;
    }
  }
}
