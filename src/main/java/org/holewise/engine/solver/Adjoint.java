package org.holewise.engine.solver;

/**
 * How a value answers to every parameter, by one solve with the transposed Jacobian (Director and
 * Rohrer 1969, IEEE Transactions on Circuit Theory 16): with Jᵀ·λ = ∂value/∂x, the slope by p is
 * ∂value/∂p − λ·∂F/∂p.
 */
final class Adjoint {
  private final Equations equations;
  private final Factors factors;
  private final double[] x;
  private final int parameters;

  Adjoint(Equations equations, Factors factors, double[] x, int parameters) {
    this.equations = equations;
    this.factors = factors;
    this.x = x;
    this.parameters = parameters;
  }

  /** The voltage between two spots; the resistance seen there is what λ has between them. */
  Response volts(int plus, int minus) {
    Nodes nodes = equations.nodes;
    double[] c = new double[equations.n];
    add(c, nodes.at(plus), 1);
    add(c, nodes.at(minus), -1);
    double[] lambda = solve(c);
    double ohms = at(lambda, plus) - at(lambda, minus);
    if (plus != minus) {
      ohms += (nodes.alone(plus) ? 1 : 0) / Nodes.FLOATING;
      ohms += (nodes.alone(minus) ? 1 : 0) / Nodes.FLOATING;
    }
    double value = equations.volts(x, plus) - equations.volts(x, minus);
    return new Response(value, ohms, slopes(lambda, new double[0]));
  }

  /** A weighted sum of currents. */
  Response current(PinCurrents currents, PinCurrents.Weights weights) {
    double[] lambda = solve(currents.gradient(weights));
    return new Response(currents.value(weights), 0, slopes(lambda, weights.bySpot()));
  }

  /** λ by node: gathered along the tree, solved, summed back up. */
  private double[] solve(double[] c) {
    equations.tree().gather(c);
    double[] lambda = factors.solveTransposed(c);
    equations.tree().sum(lambda);
    return lambda;
  }

  private static void add(double[] c, int node, double value) {
    if (node >= 0) {
      c[node] += value;
    }
  }

  private double at(double[] lambda, int spot) {
    int node = equations.nodes.at(spot);
    return node < 0 ? 0 : lambda[node];
  }

  private double[] slopes(double[] lambda, double[] weights) {
    double[] slopes = new double[parameters];
    Elements elements = equations.elements;
    for (Elements.Resistance r : elements.resistances) {
      if (r.slot() >= 0) {
        double i = r.siemens() * (equations.volts(x, r.a()) - equations.volts(x, r.b()));
        double pull = pull(lambda, weights, r.a()) - pull(lambda, weights, r.b());
        slopes[r.slot()] -= pull * r.siemens() * i;
      }
    }
    for (int k = 0; k < elements.sources.size(); k++) {
      Elements.Source source = elements.sources.get(k);
      if (source.slot >= 0 && !source.limiting) {
        slopes[source.slot] += source.sign * lambda[equations.nodes.count + k];
      }
    }
    elements.laws.forEach(law -> add(law, lambda, weights, slopes));
    return slopes;
  }

  private void add(Elements.Law law, double[] lambda, double[] weights, double[] slopes) {
    int count = law.p.length;
    for (int t = 0; t < law.spots.length; t++) {
      double pull = pull(lambda, weights, law.spots[t]);
      for (int k = 0; k < count; k++) {
        if (law.slots[k] >= 0) {
          slopes[law.slots[k]] += pull * law.dp[t * count + k];
        }
      }
    }
  }

  /** What one ampere more out of a spot does to the value. */
  private double pull(double[] lambda, double[] weights, int spot) {
    return (weights.length == 0 ? 0 : weights[spot]) - at(lambda, spot);
  }
}
