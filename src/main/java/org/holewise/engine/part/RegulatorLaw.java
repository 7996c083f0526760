package org.holewise.engine.part;

import java.util.Arrays;
import java.util.List;
import org.holewise.engine.quantity.Parameter;

/**
 * A three-terminal regulator, terminals in, out, gnd: out is at its voltage over gnd, or so much
 * below in where that is less, yet not below gnd, and never above in; behind {@link #OUTPUT}. What
 * it sources comes from in. It cannot sink: its output stage is a follower (LM78XX sheet,
 * schematic), so that an output which something else holds higher draws what {@link #BLEED} does,
 * and no more. Its own current flows from in to gnd once in is some tenths of a volt up. Stateless.
 *
 * @param dropout (V)
 * @param quiescent (A)
 */
record RegulatorLaw(double dropout, double quiescent, Parameter volts) implements Device {
  private static final double OUTPUT = 1e-3;

  /** The corner between regulating and following is as wide as this (V). */
  private static final double CORNER = 5e-4;

  /**
   * The corner between sourcing and not is as wide as this (V): at half a milliampere the output is
   * at its voltage, with no load at all half a millivolt above.
   */
  private static final double EDGE = 1e-6;

  /** From out to gnd (S), so that an output without a load is at its voltage. */
  private static final double BLEED = 1e-7;

  /** From in to gnd while it sleeps (S). */
  private static final double LEAK = 1e-12;

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
    double room = (in - dropout - p[0]) / CORNER;
    double least = p[0] + CORNER * soft(room);
    double floor = least - CORNER * soft(least / CORNER);
    double wanted = floor + CORNER * soft((in - floor) / CORNER);
    double held = below((in - floor) / CORNER);
    double above = (1 - held) * below(-least / CORNER);
    double byIn = held + above * below(room);
    double byVolts = above * (1 - below(room));
    double missing = wanted - (v[1] - v[2]);
    double root = StrictMath.hypot(missing, EDGE);
    double delivered = sourced(missing, root) / OUTPUT;
    double slope = delivered / root;
    double own = in > 0 ? quiescent * StrictMath.tanh(in / WAKES) : 0;
    double wake = in > 0 ? Math.max(0, quiescent / WAKES * (1 - square(own / quiescent))) : 0;
    Arrays.fill(i, 0);
    Arrays.fill(dv, 0);
    Arrays.fill(dp, 0);
    double[] by = {byIn * slope, -slope, (1 - byIn) * slope};
    double bled = BLEED * (v[1] - v[2]);
    i[0] = delivered;
    i[1] = bled - delivered;
    i[2] = -bled;
    for (int t = 0; t < 3; t++) {
      dv[t] = by[t];
      dv[3 + t] = -by[t];
    }
    dv[4] += BLEED;
    dv[5] -= BLEED;
    dv[7] -= BLEED;
    dv[8] += BLEED;
    i[0] += own + LEAK * in;
    i[2] -= own + LEAK * in;
    double leak = wake + LEAK;
    dv[0] += leak;
    dv[2] -= leak;
    dv[6] -= leak;
    dv[8] += leak;
    dp[0] = byVolts * slope;
    dp[1] = -byVolts * slope;
  }

  /** (missing + root)/2 without cancellation: what is missing, nothing where nothing is. */
  private static double sourced(double missing, double root) {
    return missing > 0 ? (root + missing) / 2 : EDGE * EDGE / (2 * (root - missing));
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
