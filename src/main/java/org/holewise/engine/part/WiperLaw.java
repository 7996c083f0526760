package org.holewise.engine.part;

import java.util.List;
import org.holewise.engine.quantity.Parameter;

/**
 * A resistance divided by a wiper: terminals 1, wiper, 2. Either share is held at {@link
 * #LEAST_OHMS} at least, so that draws of the setting may come as near to an end as they like.
 * Stateless.
 *
 * @param set share of the resistance between 1 and the wiper
 */
record WiperLaw(Parameter ohms, Parameter set) implements Device {
  /** The least resistance that an exercise can give (Ω). */
  static final double LEAST_OHMS = 1e-3;

  @Override
  public int terminals() {
    return 3;
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(ohms, set);
  }

  @Override
  public void evaluate(double[] v, double[] p, double[] i, double[] dv, double[] dp) {
    double near = 1 / Math.max(p[0] * p[1], LEAST_OHMS);
    double far = 1 / Math.max(p[0] * (1 - p[1]), LEAST_OHMS);
    i[0] = near * (v[0] - v[1]);
    i[2] = far * (v[2] - v[1]);
    i[1] = -i[0] - i[2];
    slopes(near, far, dv);
    bySetting(near, far, p, i, dp);
  }

  private static void slopes(double near, double far, double[] dv) {
    dv[0] = near;
    dv[1] = -near;
    dv[2] = 0;
    dv[3] = -near;
    dv[4] = near + far;
    dv[5] = -far;
    dv[6] = 0;
    dv[7] = -far;
    dv[8] = far;
  }

  private static void bySetting(double near, double far, double[] p, double[] i, double[] dp) {
    dp[0] = -i[0] / p[0];
    dp[1] = -i[0] * near * p[0];
    dp[4] = -i[2] / p[0];
    dp[5] = i[2] * far * p[0];
    dp[2] = -dp[0] - dp[4];
    dp[3] = -dp[1] - dp[5];
  }

  @Override
  public boolean limit(double[] v, double[] last, double[] p) {
    return false;
  }
}
