package org.holewise.engine.solver;

/** Lambert's W0 for tests: by Halley's method on w·e^w = x, for large x by Newton on w + ln w. */
final class Lambert {
  private Lambert() {}

  /** W0(e^z). */
  static double ofExponential(double z) {
    return z > 1 ? large(z) : small(Math.exp(z));
  }

  private static double large(double z) {
    double w = z > 3 ? z - Math.log(z) : 1;
    for (int k = 0; k < 50; k++) {
      w -= (w + Math.log(w) - z) * w / (1 + w);
    }
    return w;
  }

  private static double small(double x) {
    double w = x < 1 ? x / (1 + x) : 1;
    for (int k = 0; k < 50; k++) {
      double e = Math.exp(w);
      double f = w * e - x;
      w -= f / (e * (w + 1) - (w + 2) * f / (2 * w + 2));
    }
    return w;
  }

  /**
   * Current of a loop of a source, a resistance and a junction: I = (a/R)·W0[(IS·R/a)·exp((V +
   * IS·R)/a)] − IS.
   */
  static double loop(double volts, double ohms, double a, double saturation) {
    double z = Math.log(saturation * ohms / a) + (volts + saturation * ohms) / a;
    return a / ohms * ofExponential(z) - saturation;
  }
}
