package org.holewise.engine.part;

/**
 * The solution w of w + ln w = z for real z: the Wright ω function, Lambert's W0 of e^z without the
 * overflow.
 *
 * <p>A rough start and two steps of the fourth-order iteration of Fritsch, Shafer and Crowley
 * (1973, Communications of the ACM, algorithm 443), as Lawrence, Corless and Jeffrey use it (2012,
 * ACM Transactions on Mathematical Software, algorithm 917): rounding level for all z.
 */
final class WrightOmega {
  /** Below this ω(z) is e^z to the last bit: the next term is e^2z. */
  private static final double PURE_EXPONENTIAL = -37;

  private WrightOmega() {}

  static double of(double z) {
    if (z < PURE_EXPONENTIAL) {
      return StrictMath.exp(z);
    }
    return improve(improve(start(z), z), z);
  }

  private static double start(double z) {
    if (z < -2) {
      return StrictMath.exp(z);
    }
    return z < 1 ? StrictMath.exp(2 * (z - 1) / 3) : logarithmic(z);
  }

  private static double logarithmic(double z) {
    double log = StrictMath.log(z);
    return z - log + log / z;
  }

  private static double improve(double w, double z) {
    double r = z - w - StrictMath.log(w);
    double one = 1 + w;
    double t = one * (one + 2 * r / 3);
    return w * (1 + r / one * (t - r / 2) / (t - r));
  }
}
