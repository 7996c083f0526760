package org.holewise.engine.part;

/** e^y, going on as its tangent above {@link Junction#TANGENT_ABOVE}. */
final class Exponential {
  private static final double LAST = StrictMath.log(Junction.TANGENT_ABOVE);

  private Exponential() {}

  static double value(double y) {
    return y <= LAST ? StrictMath.exp(y) : Junction.TANGENT_ABOVE * (1 + (y - LAST));
  }

  static double slope(double y) {
    return y <= LAST ? StrictMath.exp(y) : Junction.TANGENT_ABOVE;
  }
}
