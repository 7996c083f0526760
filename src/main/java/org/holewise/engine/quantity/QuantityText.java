package org.holewise.engine.quantity;

import java.util.Optional;
import org.holewise.engine.quantity.Parsed.Why;

/**
 * Reads quantities in documents written by teachers and programs: a number, then perhaps an SI
 * prefix ({@code p n u m k M G}), then perhaps a unit, with or without spaces: {@code 390}, {@code
 * 4.7 kΩ}, {@code 20 mA}, {@code 1e3 ohm}, {@code 5 %}. Case counts only in {@code m} and {@code
 * M}; words ({@code milliamps}) are read too. Where ohms or farads are wanted, the letter code of
 * IEC 60062 is read ({@code 4k7}, {@code R33}, {@code 2u2}, {@code 4k7 Ω}), without tolerance
 * letter.
 *
 * <p>A number without unit is in the wanted unit; for {@link Unit#FRACTION} it is a fraction. A
 * single comma is a decimal comma, so that {@code 1,000} is one; two separators are ambiguous.
 * Hexadecimal, NaN, infinities and texts of more than 40 characters are unreadable. Never throws on
 * a text; linear in its length.
 */
public final class QuantityText {

  private QuantityText() {}

  /** The text as a value in the wanted unit. */
  public static Parsed parse(String text, Unit wanted) {
    return Numeral.tidy(text)
        .map(tidy -> parseTidy(tidy, wanted))
        .orElse(new Parsed.Unreadable(Why.NOT_A_NUMBER));
  }

  private static Parsed parseTidy(String tidy, Unit wanted) {
    if (tidy.isEmpty()) {
      return new Parsed.Unreadable(Why.EMPTY);
    }
    return LetterCode.parse(tidy, wanted).orElseGet(() -> number(Numeral.scan(tidy), wanted));
  }

  private static Parsed number(Numeral numeral, Unit wanted) {
    Optional<Why> fault = numeral.fault();
    if (fault.isPresent()) {
      return new Parsed.Unreadable(fault.get());
    }
    return Suffix.read(numeral.rest())
        .filter(suffix -> suffix.suits(wanted))
        .map(suffix -> numeral.times(suffix.power()))
        .orElse(new Parsed.Unreadable(Why.WRONG_UNIT));
  }
}
