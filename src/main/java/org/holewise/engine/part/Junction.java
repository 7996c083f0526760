package org.holewise.engine.part;

/**
 * A p-n junction behind a series resistance, fitted to a point of its curve: I = IS·(exp(u/a) − 1)
 * with v = u + I·R and a = n·VT; IS is such that {@code amps} flow at the given voltage over both
 * together.
 *
 * <p>With R above zero the current has a closed form (Banwell and Jayakumar 2000, Electronics
 * Letters 36(4)): w + ln w = ln(IS·R/a) + (v + IS·R)/a, I = w·a/R − IS. IS is held as its
 * logarithm, so that a breakdown at a hundred volts, fitted as such a junction, does not underflow.
 * Without R the exponential goes on as its tangent beyond a thousand amperes, where no part of this
 * trade is, so that no number overflows. Immutable.
 */
final class Junction {
  /** Where an exponential without resistance becomes its tangent (A). */
  static final double TANGENT_ABOVE = 1e3;

  /**
   * Least slope, as a share of the slope at zero volts: a junction far in reverse has none that a
   * double can hold, and a network of such junctions would have no solution at all.
   */
  static final double LEAST_SLOPE = 1e-16;

  private final double a;
  private final double series;
  private final double amps;
  private final double logAmps;

  /**
   * @param a n·VT (V)
   * @param series resistance (Ω)
   * @param amps current of the point that the curve goes through (A)
   */
  Junction(double a, double series, double amps) {
    this.a = a;
    this.series = series;
    this.amps = amps;
    this.logAmps = StrictMath.log(amps);
  }

  /** ln IS of a curve through {@code volts} at the point's current. */
  private double logSaturation(double volts) {
    double x = exponent(volts);
    return logAmps - x - StrictMath.log1p(-StrictMath.exp(-x));
  }

  /**
   * Junction's share of the point over a; at least a hundredth, so that any point can be fitted.
   */
  private double exponent(double volts) {
    return Math.max((volts - amps * series) / a, 0.01);
  }

  /**
   * Writes current (A), slope (S) and the current's slope by the point's voltage (S) into the
   * {@code at}-th entries.
   */
  void evaluate(double v, double volts, double[] i, double[] dv, double[] dp, int at) {
    double logIs = logSaturation(volts);
    double is = StrictMath.exp(logIs);
    double byLogIs;
    if (series > 0) {
      double w = omega(v, logIs, is);
      double share = w / (1 + w);
      i[at] = w * a / series - is;
      dv[at] = share / series;
      byLogIs = share * (a / series + is) - is;
    } else {
      double y = logIs + v / a;
      double rise = Exponential.value(y);
      i[at] = rise - is;
      dv[at] = Exponential.slope(y) / a;
      byLogIs = Exponential.slope(y) - is;
    }
    dv[at] = Math.max(dv[at], LEAST_SLOPE * is / a);
    dp[at] = byLogIs / (a * StrictMath.expm1(-exponent(volts)));
  }

  private double omega(double v, double logIs, double is) {
    return WrightOmega.of(logIs + StrictMath.log(series / a) + (v + is * series) / a);
  }

  /** Voltage at which the curve is at its sharpest bend (Nagel 1975, critical voltage) (V). */
  double critical(double volts) {
    double u = a * (StrictMath.log(a / StrictMath.sqrt(2)) - logSaturation(volts));
    return u + series * a / StrictMath.sqrt(2);
  }

  /**
   * Holds a rise of the voltage back to a rise that current would make (Nagel 1975, SPICE2, UCB/ERL
   * M520): from below the bend at most to the bend, from above it by the logarithm of what was
   * asked.
   */
  double limited(double v, double last, double volts) {
    if (v <= last) {
      return fallen(v, last, volts);
    }
    double bend = critical(volts);
    if (v <= bend) {
      return v;
    }
    if (last < bend - a) {
      return bend;
    }
    double logIs = logSaturation(volts);
    double from = inner(last, logIs);
    double rise = inner(v, logIs) - from;
    return rise <= 2 * a ? v : outer(from + a * StrictMath.log1p(rise / a), logIs);
  }

  /**
   * Takes a fall further, to where the curve has the current that its tangent has at {@code v}: a
   * tangent alone goes down an exponential by one n·VT a step.
   */
  private double fallen(double v, double last, double volts) {
    double u = inner(last, logSaturation(volts));
    double drop = last - u;
    return u < Exponential.STEEP * a ? v : Math.min(v, Exponential.fallen(v, u, drop, a));
  }

  private double inner(double v, double logIs) {
    if (series == 0) {
      return v;
    }
    double is = StrictMath.exp(logIs);
    return v - (omega(v, logIs, is) * a - is * series);
  }

  private double outer(double u, double logIs) {
    double rise = Exponential.value(logIs + u / a);
    return u + series * (rise - StrictMath.exp(logIs));
  }
}
