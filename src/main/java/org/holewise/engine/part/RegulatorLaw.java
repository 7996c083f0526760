package org.holewise.engine.part;

import java.util.Arrays;
import java.util.List;
import org.holewise.engine.quantity.Parameter;

/**
 * A three-terminal regulator, terminals in, out, gnd: out is at its voltage over gnd, or so much
 * below in where that is less, and never below gnd, behind {@link #OUTPUT}. What it sources comes
 * from in, what is pushed into it goes to gnd. Its own current flows from in to gnd once in is some
 * tenths of a volt up. Stateless.
 *
 * @param dropout (V)
 * @param quiescent (A)
 */
record RegulatorLaw(double dropout, double quiescent, Parameter volts) implements Device {
  private static final double OUTPUT = 1e-3;

  /** The corner between regulating and following is as wide as this (V). */
  private static final double CORNER = 5e-4;

  /** Input voltage from which its own current is there (V). */
  private static final double WAKES = 0.5;

  @Override
  public int terminals() {
    return 3;
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(volts);
  }

  @Override
  public boolean exponential() {
    return false;
  }

  @Override
  public void evaluate(double[] v, double[] p, double[] i, double[] dv, double[] dp) {
    double in = v[0] - v[2];
    double follows = below((in - dropout - p[0]) / CORNER);
    double least = p[0] + CORNER * soft((in - dropout - p[0]) / CORNER);
    double above = below(-least / CORNER);
    double wanted = least - CORNER * soft(least / CORNER);
    double byIn = follows * above;
    double byVolts = (1 - follows) * above;
    double delivered = (wanted - (v[1] - v[2])) / OUTPUT;
    double own = in > 0 ? quiescent * StrictMath.tanh(in / WAKES) : 0;
    double wake = in > 0 ? Math.max(0, quiescent / WAKES * (1 - square(own / quiescent))) : 0;
    Arrays.fill(i, 0);
    Arrays.fill(dv, 0);
    Arrays.fill(dp, 0);
    double[] by = {byIn / OUTPUT, -1 / OUTPUT, (1 - byIn) / OUTPUT};
    int rail = delivered >= 0 ? 0 : 2;
    i[1] = -delivered;
    i[rail] = delivered;
    for (int t = 0; t < 3; t++) {
      dv[3 + t] = -by[t];
      dv[rail * 3 + t] = by[t];
    }
    i[0] += own;
    i[2] -= own;
    double leak = wake + 1e-12;
    dv[0] += leak;
    dv[2] -= leak;
    dv[6] -= leak;
    dv[8] += leak;
    dp[1] = -byVolts / OUTPUT;
    dp[rail] = byVolts / OUTPUT;
  }

  private static double square(double x) {
    return x * x;
  }

  /** −ln(1 + exp(−x)): x below zero, nothing above, rounded between. */
  private static double soft(double x) {
    return x < -40 ? x : -StrictMath.log1p(StrictMath.exp(-x));
  }

  /** Slope of {@link #soft}: 1 below zero, nothing above. */
  private static double below(double x) {
    return x > 700 ? 0 : 1 / (1 + StrictMath.exp(x));
  }

  @Override
  public boolean limit(double[] v, double[] last, double[] p) {
    return false;
  }

  @Override
  public void start(double[] v, double[] p) {
    v[0] = Math.max(v[0], v[2] + p[0] + dropout + 1);
    v[1] = v[2] + p[0];
  }
}
