package org.holewise.engine.part;

import java.util.List;
import org.holewise.engine.quantity.Parameter;

/**
 * A junction forward from anode to cathode, and the same law mirrored about the breakdown voltage
 * in reverse; both voltages are uncertain. Stateless.
 */
record ZenerLaw(Junction forward, Junction breakdown, Parameter volts, Parameter breakdownVolts)
    implements Device {

  @Override
  public int terminals() {
    return 2;
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(volts, breakdownVolts);
  }

  @Override
  public void evaluate(double[] v, double[] p, double[] i, double[] dv, double[] dp) {
    double u = v[0] - v[1];
    forward.evaluate(u, p[0], i, dv, dp, 0);
    breakdown.evaluate(-u, p[1], i, dv, dp, 1);
    i[0] -= i[1];
    dv[0] += dv[1];
    dp[1] = -dp[1];
    TwoTerminals.mirror(i, dv);
    dp[2] = -dp[0];
    dp[3] = -dp[1];
  }

  @Override
  public boolean limit(double[] v, double[] last, double[] p) {
    double asked = v[0] - v[1];
    double before = last[0] - last[1];
    double held =
        asked > 0
            ? forward.limited(asked, before, p[0])
            : -breakdown.limited(-asked, -before, p[1]);
    v[0] = v[1] + held;
    return held != asked;
  }

  @Override
  public void start(double[] v, double[] p) {
    v[0] = v[1] + forward.critical(p[0]);
  }
}
