package org.holewise.engine.part;

import java.util.List;
import org.holewise.engine.quantity.Parameter;

/**
 * One transistor of an output that is on: a resistance between a rail and the pin, so much at one
 * supply and in inverse proportion to it at others. Terminals rail, pin, other rail; stateless.
 *
 * @param ohms at the supply {@code at} (V)
 */
record OutputLaw(Parameter ohms, double at) implements Device {
  /** A supply is taken to be this much at least (V). */
  private static final double LEAST = 0.5;

  @Override
  public int terminals() {
    return 3;
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(ohms);
  }

  @Override
  public void evaluate(double[] v, double[] p, double[] i, double[] dv, double[] dp) {
    double supply = Math.abs(v[0] - v[2]);
    double g = Math.max(supply, LEAST) / (p[0] * at);
    double bySupply = supply > LEAST ? Math.signum(v[0] - v[2]) / (p[0] * at) : 0;
    double across = v[0] - v[1];
    i[0] = g * across;
    i[1] = -i[0];
    i[2] = 0;
    dv[0] = g + bySupply * across;
    dv[1] = -g;
    dv[2] = -bySupply * across;
    for (int t = 0; t < 3; t++) {
      dv[3 + t] = -dv[t];
      dv[6 + t] = 0;
    }
    dp[0] = -i[0] / p[0];
    dp[1] = -dp[0];
    dp[2] = 0;
  }

  @Override
  public boolean limit(double[] v, double[] last, double[] p) {
    return false;
  }
}
