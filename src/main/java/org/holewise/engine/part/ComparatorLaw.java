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
  private static final double LEAST_SUPPLY = 2;
  private static final double FADE = 0.05;

  /** What an open collector leaks (S). */
  private static final double LEAK = 1e-12;

  private static final double FLAT = 20;

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
    double powered = powered(v[3] - v[4]);
    double on = powered * (0.5 + 0.5 * StrictMath.tanh(u));
    double byInput = powered * gain / 2 * slope(u);
    double over = (v[0] - v[4]) / (ohms * amps);
    double pull = amps * StrictMath.tanh(over);
    double bySupply = fade(v[3] - v[4]) * (0.5 + 0.5 * StrictMath.tanh(u)) * pull;
    double byOut = on * slope(over) / ohms + LEAK;
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

  private static double slope(double u) {
    double e = StrictMath.exp(-2 * Math.abs(u));
    return 4 * e / ((1 + e) * (1 + e));
  }

  private static double powered(double supply) {
    double s = (supply - LEAST_SUPPLY + FADE) / FADE;
    return s <= 0 ? 0 : s >= 1 ? 1 : s * s * (3 - 2 * s);
  }

  private static double fade(double supply) {
    double s = (supply - LEAST_SUPPLY + FADE) / FADE;
    return s <= 0 || s >= 1 ? 0 : 6 * s * (1 - s) / FADE;
  }

  /** As {@link OpAmpLaw#limit}. */
  @Override
  public boolean limit(double[] v, double[] last, double[] p) {
    double was = bend(last, p);
    double is = bend(v, p);
    double held = is;
    if (Math.abs(was) > 1 && is * was < 0) {
      held = 0;
    } else if (Math.abs(was) < FLAT && Math.abs(is) > Math.max(1, 2 * Math.abs(was))) {
      held = Math.copySign(Math.max(1, 2 * Math.abs(was)), is);
    }
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
    v[3] = Math.max(v[3], v[4] + 2 * LEAST_SUPPLY);
    v[1] = v[2] - p[0] + side * 2 * FLAT / gain;
  }
}
