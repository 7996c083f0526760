package org.holewise.engine.part;

import java.util.List;
import org.holewise.engine.quantity.Parameter;

/**
 * What flows out of a bipolar input that is pulled low: a resistance to a voltage inside, some
 * quarter of the supply, beyond which nothing flows. The corner is rounded over some tens of
 * millivolts, as the junction inside rounds it. Terminals pin, plus, minus; stateless.
 *
 * @param ohms of the resistor inside (Ω)
 */
record InputLoad(Parameter ohms) implements Device {
  /** Where an open input comes to lie, as a share of the supply: 1.3 V of 5 V (from memory). */
  private static final double OPEN = 0.26;

  /** What rounds the corner (V). */
  private static final double CORNER = 0.05;

  /** Least slope (S), so that an input alone on its wire has a voltage. */
  private static final double LEAST = 1e-9;

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
    double open = v[2] + OPEN * (v[1] - v[2]);
    double below = (open - v[0]) / CORNER;
    boolean far = below > 30;
    double soft = far ? below : StrictMath.log1p(StrictMath.exp(below));
    double slope = (far ? 1 : 1 - 1 / (1 + StrictMath.exp(below))) / p[0] + LEAST;
    i[0] = -CORNER * soft / p[0] - LEAST * (open - v[0]);
    i[1] = -i[0];
    i[2] = 0;
    dv[0] = slope;
    dv[1] = -OPEN * slope;
    dv[2] = -(1 - OPEN) * slope;
    for (int t = 0; t < 3; t++) {
      dv[3 + t] = -dv[t];
      dv[6 + t] = 0;
    }
    dp[0] = CORNER * soft / (p[0] * p[0]);
    dp[1] = -dp[0];
    dp[2] = 0;
  }

  @Override
  public boolean limit(double[] v, double[] last, double[] p) {
    return false;
  }

  @Override
  public boolean drives() {
    return false;
  }
}
