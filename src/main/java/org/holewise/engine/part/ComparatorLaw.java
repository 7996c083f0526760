package org.holewise.engine.part;

import java.util.Arrays;
import java.util.List;
import org.holewise.engine.quantity.Parameter;

/**
 * An open collector, terminals out, +, −, top, bottom: where V− is above V+ it pulls out towards
 * bottom like a resistance up to a greatest current, i = S·I·tanh(v/(R·I)) with S = ½ + ½·tanh(gain
 * ·(V− − V+ − offset)). Below 2 V from top to bottom it lets go. Stateless.
 *
 * @param gain (1/V)
 * @param ohms (Ω)
 * @param amps (A)
 */
record ComparatorLaw(double gain, double ohms, double amps, Parameter offset) implements Device {
  /** What an open collector leaks (S). */
  private static final double LEAK = 1e-12;

  @Override
  public int terminals() {
    return 5;
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(offset);
  }

  @Override
  public boolean draws(int terminal) {
    return terminal == 0 || terminal == 4;
  }

  @Override
  public boolean exponential() {
    return false;
  }

  @Override
  public boolean amplifies() {
    return true;
  }

  @Override
  public boolean carries(int in, int out) {
    return draws(in) && draws(out);
  }

  private double bend(double[] v, double[] p) {
    return gain * (v[2] - v[1] - p[0]);
  }

  @Override
  public void evaluate(double[] v, double[] p, double[] i, double[] dv, double[] dp) {
    double u = bend(v, p);
    double powered = Saturation.powered(v[3] - v[4]);
    double on = powered * (0.5 + 0.5 * StrictMath.tanh(u));
    double byInput = powered * gain / 2 * Saturation.slope(u);
    double over = (v[0] - v[4]) / (ohms * amps);
    double pull = amps * StrictMath.tanh(over);
    double bySupply = Saturation.fade(v[3] - v[4]) * (0.5 + 0.5 * StrictMath.tanh(u)) * pull;
    double byOut = on * Saturation.slope(over) / ohms + LEAK;
    Arrays.fill(i, 0);
    Arrays.fill(dv, 0);
    Arrays.fill(dp, 0);
    i[0] = on * pull + LEAK * (v[0] - v[4]);
    i[4] = -i[0];
    double[] by = {byOut, -byInput * pull, byInput * pull, bySupply, -byOut - bySupply};
    for (int t = 0; t < 5; t++) {
      dv[t] = by[t];
      dv[20 + t] = -by[t];
    }
    dp[0] = -byInput * pull;
    dp[4] = byInput * pull;
  }

  @Override
  public boolean limit(double[] v, double[] last, double[] p) {
    double was = bend(last, p);
    double is = bend(v, p);
    double held = Saturation.held(was, is);
    if (held == is) {
      return false;
    }
    v[1] = v[2] - p[0] - held / gain;
    return true;
  }

  @Override
  public void start(double[] v, double[] p) {
    start(v, p, 0);
  }

  @Override
  public void start(double[] v, double[] p, int side) {
    v[3] = Math.max(v[3], v[4] + 2 * Saturation.LEAST_SUPPLY);
    v[1] = v[2] - p[0] + side * 2 * Saturation.FLAT / gain;
  }
}
