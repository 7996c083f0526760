package org.holewise.document;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers on their way out: six significant digits, the same text on every machine. */
final class Numbers {
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
    BigDecimal rounded = new BigDecimal(value).round(SIX);
    if (rounded.signum() == 0) {
      return BigDecimal.ZERO;
    }
    BigDecimal stripped = rounded.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
