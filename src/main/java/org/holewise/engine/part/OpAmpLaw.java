package org.holewise.engine.part;

import java.util.Arrays;
import java.util.List;
import org.holewise.engine.quantity.Parameter;

/**
 * The output of an op-amp, terminals out, +, −, top, bottom: out = middle + half·tanh(gain·(V+ − V−
 * + offset)/half) between top and bottom less the headroom, behind {@link #OUTPUT}. What it sources
 * comes from top, what it sinks goes to bottom. Below 2 V from top to bottom it is open. Stateless.
 *
 * @param gain of a small difference
 * @param top how near to top it comes (V)
 * @param bottom how near to bottom it comes (V)
 */
record OpAmpLaw(double gain, double top, double bottom, Parameter offset) implements Device {
  /** Too little for a volt to be off by a tenth of a millivolt at any current of this trade (Ω). */
  private static final double OUTPUT = 1e-3;

  /** An open output: 1 GΩ. */
  private static final double OPEN = 1e-12;

  /** Keeps the swing from vanishing where the headroom leaves none (V). */
  private static final double LEAST_HALF = 0.01;

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
    return terminal != 1 && terminal != 2;
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

  private double half(double[] v) {
    return Math.max(LEAST_HALF, (v[3] - top - v[4] - bottom) / 2);
  }

  private double bend(double[] v, double[] p) {
    return gain * (v[1] - v[2] + p[0]) / half(v);
  }

  @Override
  public void evaluate(double[] v, double[] p, double[] i, double[] dv, double[] dp) {
    double half = half(v);
    double u = bend(v, p);
    double tanh = StrictMath.tanh(u);
    double slope = Saturation.slope(u);
    double swing = half > LEAST_HALF ? (tanh - u * slope) / 2 : 0;
    double wanted = (v[3] - top + v[4] + bottom) / 2 + half * tanh;
    double[] by = {-1, gain * slope, -gain * slope, 0.5 + swing, 0.5 - swing};
    double supply = v[3] - v[4];
    double strength = (OPEN + (1 - OPEN) * Saturation.powered(supply)) / OUTPUT;
    double delivered = strength * (wanted - v[0]);
    for (int t = 0; t < 5; t++) {
      by[t] *= strength;
    }
    double fade = (1 - OPEN) * Saturation.fade(supply) / OUTPUT * (wanted - v[0]);
    by[3] += fade;
    by[4] -= fade;
    Arrays.fill(i, 0);
    Arrays.fill(dv, 0);
    Arrays.fill(dp, 0);
    int rail = delivered >= 0 ? 3 : 4;
    i[0] = -delivered;
    i[rail] = delivered;
    for (int t = 0; t < 5; t++) {
      dv[t] = -by[t];
      dv[rail * 5 + t] = by[t];
    }
    dp[0] = -by[1];
    dp[rail] = by[1];
  }

  @Override
  public boolean limit(double[] v, double[] last, double[] p) {
    double half = half(v);
    double was = bend(last, p);
    double is = bend(v, p);
    double held = Saturation.held(was, is);
    if (held == is) {
      return false;
    }
    v[1] = v[2] - p[0] + held * half / gain;
    return true;
  }

  @Override
  public void start(double[] v, double[] p) {
    start(v, p, 0);
  }

  @Override
  public void start(double[] v, double[] p, int side) {
    v[3] = Math.max(v[3], v[4] + top + bottom + 2 * Saturation.LEAST_SUPPLY);
    v[1] = v[2] - p[0] + side * 2 * Saturation.FLAT * half(v) / gain;
  }
}
