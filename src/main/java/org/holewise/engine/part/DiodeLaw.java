package org.holewise.engine.part;

import java.util.List;
import org.holewise.engine.quantity.Parameter;

/** A junction from anode to cathode whose forward voltage is uncertain. Stateless. */
record DiodeLaw(Junction junction, Parameter volts) implements Device {

  @Override
  public int terminals() {
    return 2;
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(volts);
  }

  @Override
  public void evaluate(double[] v, double[] p, double[] i, double[] dv, double[] dp) {
    junction.evaluate(v[0] - v[1], p[0], i, dv, dp, 0);
    TwoTerminals.mirror(i, dv);
    dp[1] = -dp[0];
  }

  @Override
  public boolean limit(double[] v, double[] last, double[] p) {
    double asked = v[0] - v[1];
    double held = junction.limited(asked, last[0] - last[1], p[0]);
    v[0] = v[1] + held;
    return held != asked;
  }

  @Override
  public boolean carries(int in, int out) {
    return in == 0;
  }

  @Override
  public void start(double[] v, double[] p) {
    v[0] = v[1] + junction.critical(p[0]);
  }
}
