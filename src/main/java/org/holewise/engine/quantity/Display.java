package org.holewise.engine.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Prints quantities for people: three significant digits, SI prefix, a space, the unit: {@code 4.7
 * kΩ}, {@code 9.90 mA}, {@code 5 %}. Halves round away from zero; a minus is U+2212. Beyond the
 * prefixes, below 1 p and from 1000 G on, an exponent stands after the number ({@code 1.50e−14 A});
 * units without prefixes and counts have it below 0.001 and from a million on. {@link QuantityText}
 * reads all of it back. The same in every locale.
 */
public final class Display {

  private static final String PREFIXES = "pnµm kMG";
  private static final int LEAST_PREFIX = -12;
  private static final String MINUS = "\u2212";
  private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_UP);
  // Twelve figures first, so that a written 1.005, just below it as a double, rounds up.
  private static final MathContext WRITTEN = new MathContext(12, RoundingMode.HALF_EVEN);

  private Display() {}

  /** The value of a part: trailing zeros are dropped, {@code 4.7 kΩ}. Finite values only. */
  public static String value(double si, Unit unit) {
    return print(si, unit, false);
  }

  /** A reading or a limit: all three digits stay, {@code 9.90 mA}. Finite values only. */
  public static String reading(double si, Unit unit) {
    return print(si, unit, true);
  }

  private static String print(double si, Unit unit, boolean zeros) {
    if (!Double.isFinite(si)) {
      throw new IllegalArgumentException("no number to show: " + si);
    }
    BigDecimal size = new BigDecimal(Math.abs(si), WRITTEN).round(THREE);
    BigDecimal shown = unit == Unit.FRACTION ? size.movePointRight(2) : size;
    String sign = si < 0 && shown.signum() > 0 ? MINUS : "";
    return sign + unsigned(shown, unit, zeros);
  }

  private static String unsigned(BigDecimal shown, Unit unit, boolean zeros) {
    boolean prefixed = unit.prefixed() && unit != Unit.COUNT;
    int decade = decade(shown);
    if (decade < (prefixed ? LEAST_PREFIX : -3) || decade > (prefixed ? 11 : 5)) {
      String exponent = "e" + (decade < 0 ? MINUS : "") + Math.abs(decade);
      return figures(shown.movePointLeft(decade), zeros) + exponent + tail("", unit);
    }
    int power = prefixed ? 3 * Math.floorDiv(decade, 3) : 0;
    return figures(shown.movePointLeft(power), zeros) + tail(prefix(power), unit);
  }

  /** The power of ten of the first digit; 0 for zero. */
  private static int decade(BigDecimal number) {
    return number.signum() == 0 ? 0 : number.precision() - number.scale() - 1;
  }

  private static String figures(BigDecimal number, boolean zeros) {
    BigDecimal three = number.setScale(Math.max(2 - decade(number), 0), RoundingMode.HALF_UP);
    if (zeros || three.scale() == 0) {
      return three.toPlainString();
    }
    BigDecimal stripped = three.stripTrailingZeros();
    return stripped.setScale(Math.max(stripped.scale(), 0)).toPlainString();
  }

  private static String prefix(int power) {
    return PREFIXES.substring((power - LEAST_PREFIX) / 3).substring(0, 1).strip();
  }

  private static String tail(String prefix, Unit unit) {
    String tail = prefix + unit.symbol();
    return tail.isEmpty() ? "" : " " + tail;
  }
}
