package org.holewise.document;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers on their way out: six significant digits, the same text on every machine. */
final class Numbers {
  /** Below a millionth of a millionth nothing is measured: what is left there is rounding (SI). */
  private static final double NOTHING = 1e-12;

  private static final MathContext SIX = new MathContext(6, RoundingMode.HALF_EVEN);

  private Numbers() {}

  /**
   * The number to be written.
   *
   * @throws ArithmeticException where it is no finite number
   */
  static BigDecimal six(double value) {
    if (!Double.isFinite(value)) {
      throw new ArithmeticException("cannot be written: " + value);
    }
    if (Math.abs(value) < NOTHING) {
      return BigDecimal.ZERO;
    }
    BigDecimal rounded = new BigDecimal(value).round(SIX);
    BigDecimal stripped = rounded.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
