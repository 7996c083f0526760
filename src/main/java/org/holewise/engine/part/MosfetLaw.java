package org.holewise.engine.part;

import java.util.List;
import org.holewise.engine.quantity.Parameter;

/**
 * A MOSFET by the square law with its triode region (Shichman and Hodges 1968, IEEE Journal of
 * Solid-State Circuits 3(3)), terminals d, g, s: with u = vgs − VT above zero, i = k·u²·(1 + λ·vds)
 * where vds ≥ u, else k·(2·u − vds)·vds·(1 + λ·vds). Where the drain lies below the source the two
 * trade places. All signs turn for a P channel. The gate draws nothing; what leaks from drain to
 * source is too little for a meter of 10 MΩ to show. Stateless.
 *
 * @param sign 1 for an N channel, −1 for a P channel
 * @param k (A/V²)
 * @param lambda (1/V)
 */
record MosfetLaw(int sign, double k, double lambda, Parameter threshold) implements Device {
  /** Keeps what is off from being cut out of the network (S). */
  private static final double LEAK = 1e-13;

  /** Step beyond which a Newton step is held back (V). */
  private static final double STEP = 2;

  @Override
  public int terminals() {
    return 3;
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(threshold);
  }

  @Override
  public boolean draws(int terminal) {
    return terminal != 1;
  }

  @Override
  public boolean exponential() {
    return false;
  }

  @Override
  public boolean carries(int in, int out) {
    return in != 1 && out != 1;
  }

  @Override
  public void evaluate(double[] v, double[] p, double[] i, double[] dv, double[] dp) {
    double ds = sign * (v[0] - v[2]);
    boolean turned = ds < 0;
    int drain = turned ? 2 : 0;
    int source = 2 - drain;
    double vds = Math.abs(ds);
    double u = sign * (v[1] - v[source]) - p[0];
    double rise = 1 + lambda * vds;
    double square = 0;
    double byU = 0;
    double byDs = 0;
    if (u > 0 && vds >= u) {
      square = k * u * u;
      byU = 2 * k * u * rise;
      byDs = square * lambda;
    } else if (u > 0) {
      square = k * (2 * u - vds) * vds;
      byU = 2 * k * vds * rise;
      byDs = 2 * k * (u - vds) * rise + square * lambda;
    }
    byDs += LEAK;
    double current = sign * (square * rise + LEAK * vds);
    i[drain] = current;
    i[1] = 0;
    i[source] = -current;
    fill(drain, source, byU, byDs, dv);
    dp[drain] = -sign * byU;
    dp[1] = 0;
    dp[source] = sign * byU;
  }

  /** di/dv from the slopes by gate and drain against the source; the sign turns twice. */
  private static void fill(int drain, int source, double byU, double byDs, double[] dv) {
    java.util.Arrays.fill(dv, 0);
    dv[drain * 3 + drain] = byDs;
    dv[drain * 3 + 1] = byU;
    dv[drain * 3 + source] = -byU - byDs;
    dv[source * 3 + drain] = -byDs;
    dv[source * 3 + 1] = -byU;
    dv[source * 3 + source] = byU + byDs;
  }

  /** Gate and drain, each against the source, move at most some volts at once. */
  @Override
  public boolean limit(double[] v, double[] last, double[] p) {
    boolean held = false;
    for (int t = 0; t < 2; t++) {
      double was = last[t] - last[2];
      double most = STEP + Math.abs(was);
      double step = v[t] - v[2] - was;
      if (Math.abs(step) > most) {
        v[t] = v[2] + was + Math.copySign(most, step);
        held = true;
      }
    }
    return held;
  }

  @Override
  public void start(double[] v, double[] p) {
    v[1] = v[2] + sign * (p[0] + 0.5);
    v[0] = v[2] + sign;
  }
}
