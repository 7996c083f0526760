package org.holewise.engine.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.holewise.engine.quantity.Parsed.Why;

/**
 * The decimal number at the head of a text, taken apart, and the rest. Every quantifier of the
 * pattern is possessive, so that reading is linear in the length of the text.
 *
 * @param mark the decimal mark, a point or a comma, or empty
 * @param exponent sign and figures after {@code e}, or empty
 */
record Numeral(
    String sign, String whole, String mark, String fraction, String exponent, String rest) {

  private static final int LONGEST = 40;
  private static final double LARGEST = 1e18;
  private static final double SMALLEST = 1e-30;
  private static final Pattern HEAD =
      Pattern.compile(
          "([+-]?+) *+([0-9]*+)(?:([.,])([0-9]*+))?+(?:[eE]([+-]?+[0-9]++))?+(.*+)",
          Pattern.DOTALL);

  static Numeral scan(String tidy) {
    Matcher head = HEAD.matcher(tidy);
    if (!head.matches()) {
      throw new IllegalStateException("the pattern takes every text, not: " + tidy);
    }
    return new Numeral(
        part(head, 1), part(head, 2), part(head, 3), part(head, 4), part(head, 5), part(head, 6));
  }

  /** One spelling for each kind of space, minus, micro; empty for what is too long to be read. */
  static Optional<String> tidy(String text) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    StringBuilder tidy = new StringBuilder(text.length());
    text.chars().forEach(c -> tidy.append(tidy((char) c)));
    return Optional.of(tidy.toString().strip());
  }

  private static char tidy(char c) {
    return switch (c) {
      case '\u2212', '\u2013' -> '-';
      case '\u00b5', '\u03bc' -> 'u';
      default -> Character.isWhitespace(c) || Character.isSpaceChar(c) ? ' ' : c;
    };
  }

  private static String part(Matcher head, int group) {
    return Optional.ofNullable(head.group(group)).orElse("");
  }

  /** What is wrong with the number, whatever its unit. */
  Optional<Why> fault() {
    if (whole.isEmpty() && fraction.isEmpty()) {
      return Optional.of(Why.NOT_A_NUMBER);
    }
    if (exponent.isEmpty() && rest.matches(" *+[.,]?+[0-9].*+")) {
      return Optional.of(Why.AMBIGUOUS_SEPARATOR);
    }
    if (rest.chars().anyMatch(Character::isDigit)) {
      return Optional.of(Why.NOT_A_NUMBER);
    }
    return Optional.empty();
  }

  /** The number times a power of ten, rounded once. */
  Parsed times(int power) {
    if (exponent.length() > 4) {
      return new Parsed.Unreadable(Why.OUT_OF_RANGE);
    }
    int ten = power + (exponent.isEmpty() ? 0 : Integer.parseInt(exponent));
    double si = Double.parseDouble(sign + "0" + whole + "." + fraction + "e" + ten);
    double size = Math.abs(si);
    boolean zero = (whole + fraction).chars().allMatch(c -> c == '0');
    if (size > LARGEST || (size < SMALLEST && !zero)) {
      return new Parsed.Unreadable(Why.OUT_OF_RANGE);
    }
    return new Parsed.Value(zero ? 0 : si);
  }
}
