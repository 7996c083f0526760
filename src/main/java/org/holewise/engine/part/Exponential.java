package org.holewise.engine.part;

/** e^y, going on as its tangent above {@link Junction#TANGENT_ABOVE}. */
final class Exponential {
  private static final double LAST = StrictMath.log(Junction.TANGENT_ABOVE);

  /** From so many times a upwards the one in e^(u/a) − 1 no longer counts. */
  static final double STEEP = 3;

  /** A fall to less than this share of the current is taken along the curve, … */
  private static final double FAR = 0.3;

  /** … but to no smaller share at once, … */
  private static final double LEAST = 1e-6;

  /** … and one that the tangent takes well below no current is for other reasons. */
  private static final double BELOW = -0.5;

  private Exponential() {}

  /**
   * Where a step down the tangent of e^(u/a) leads on the curve itself.
   *
   * @param v asked for: u and the drop over a series resistance (V)
   * @param drop over that resistance where the step begins (V)
   */
  static double fallen(double v, double u, double drop, double a) {
    double share = 1 + (v - u - drop) / (a + drop);
    if (share > FAR || share < BELOW) {
      return v;
    }
    double kept = Math.max(share, LEAST);
    return Math.max(u + a * StrictMath.log(kept), a) + drop * kept;
  }

  static double value(double y) {
    return y <= LAST ? StrictMath.exp(y) : Junction.TANGENT_ABOVE * (1 + (y - LAST));
  }

  static double slope(double y) {
    return y <= LAST ? StrictMath.exp(y) : Junction.TANGENT_ABOVE;
  }
}
