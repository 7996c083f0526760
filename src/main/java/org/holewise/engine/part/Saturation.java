package org.holewise.engine.part;

/** What the outputs of amplifiers and comparators share: tanh, its bend, and a supply's least. */
final class Saturation {
  /** Beyond this tanh is one to the last bit. */
  static final double FLAT = 20;

  /** Supply below which an output lets go (V), over a stretch of {@link #FADE}. */
  static final double LEAST_SUPPLY = 2;

  private static final double FADE = 0.05;

  private Saturation() {}

  /** 1/cosh², which tanh itself would lose near its ends. */
  static double slope(double u) {
    double e = StrictMath.exp(-2 * Math.abs(u));
    return 4 * e / ((1 + e) * (1 + e));
  }

  /** From 0 to 1 as the supply (V) comes up. */
  static double powered(double supply) {
    double s = (supply - LEAST_SUPPLY + FADE) / FADE;
    return s <= 0 ? 0 : s >= 1 ? 1 : s * s * (3 - 2 * s);
  }

  /** Slope of {@link #powered} (1/V). */
  static double fade(double supply) {
    double s = (supply - LEAST_SUPPLY + FADE) / FADE;
    return s <= 0 || s >= 1 ? 0 : 6 * s * (1 - s) / FADE;
  }

  /**
   * Where tanh's argument may go to in one step: across the middle only to the middle, out of it
   * only so far that the slope still tells.
   */
  static double held(double was, double is) {
    if (Math.abs(was) > 1 && is * was < 0) {
      return 0;
    }
    double most = Math.max(1, 2 * Math.abs(was));
    return Math.abs(was) < FLAT && Math.abs(is) > most ? Math.copySign(most, is) : is;
  }
}
