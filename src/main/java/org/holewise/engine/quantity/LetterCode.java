package org.holewise.engine.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.holewise.engine.quantity.Parsed.Why;

/**
 * The letter code of IEC 60062 for resistors and capacitors: a letter stands for the multiplier and
 * takes the place of the decimal mark ({@code R K M G} for ohms, {@code p n µ m F} for farads), and
 * a second one may give the tolerance: {@code 4K7}, {@code R47}, {@code 1R8J}, {@code 27KK}. By its
 * place the first {@code M} is mega and a second one 20 %. A small {@code r} or {@code k} and a
 * {@code u} are read as well; a small {@code m} is milli, which the code knows for farads only.
 */
public final class LetterCode {

  private static final Pattern CODE =
      Pattern.compile("([0-9]{0,4}+)([RrKkMGpnumF])([0-9]{0,4}+)([BCDFGJKM]?+)");
  private static final Pattern UNIT = Pattern.compile(" *+(?:[\u03a9\u2126F]|[oO][hH][mM][sS]?+)$");
  private static final String OHMS = "RKMG";
  private static final String FARADS = "pnµmF";
  private static final int FIGURES = 4;

  private LetterCode() {}

  /** What the code says; empty where the text is none. */
  public static Optional<CodedValue> read(String text) {
    return Numeral.tidy(text).flatMap(LetterCode::readTidy);
  }

  /**
   * The code of a resistance or capacitance, with at least two figures ({@code 1K0}); empty where
   * it has more than four, or is beyond the letters, or the unit has no code.
   */
  public static Optional<String> print(double value, Unit unit) {
    if (!coded(unit) || !(value > 0 && value <= Double.MAX_VALUE)) {
      return Optional.empty();
    }
    // Twelve figures first: a product such as 4.7 * 1000 carries an error in its last bit.
    BigDecimal exact = new BigDecimal(value, new MathContext(12)).stripTrailingZeros();
    String letters = unit == Unit.OHM ? OHMS : FARADS;
    int least = unit == Unit.OHM ? 0 : -12;
    int decade = exact.precision() - exact.scale() - 1;
    int step = Math.min(Math.max(Math.floorDiv(decade - least, 3), 0), letters.length() - 1);
    BigDecimal figures = exact.movePointLeft(least + 3 * step);
    if (exact.precision() > FIGURES || figures.scale() > FIGURES || decade - least > 12) {
      return Optional.empty();
    }
    return Optional.of(join(figures, letters.charAt(step)));
  }

  private static boolean coded(Unit unit) {
    return unit == Unit.OHM || unit == Unit.FARAD;
  }

  private static String join(BigDecimal figures, char letter) {
    boolean single = figures.precision() == 1 && figures.compareTo(BigDecimal.TEN) < 0;
    String plain =
        (single ? figures.setScale(Math.max(figures.scale(), 0) + 1) : figures).toPlainString();
    int mark = plain.indexOf('.');
    String whole = mark < 0 ? plain : plain.substring(0, mark);
    return (whole.equals("0") ? "" : whole) + letter + (mark < 0 ? "" : plain.substring(mark + 1));
  }

  /**
   * A text whose letter stands among or before its figures, as a value in the wanted unit; empty
   * for any other text, which is then a plain number. A unit may follow.
   */
  static Optional<Parsed> parse(String tidy, Unit wanted) {
    Matcher unit = UNIT.matcher(tidy);
    String code = unit.find() ? tidy.substring(0, unit.start()) : tidy;
    if (code.isEmpty() || !Character.isDigit(code.charAt(code.length() - 1))) {
      return Optional.empty();
    }
    Optional<Unit> written = Unit.named(tidy.substring(code.length()).strip());
    return readTidy(code)
        .map(
            coded ->
                coded.unit() == written.orElse(coded.unit()) && coded.unit() == wanted
                    ? new Parsed.Value(coded.value())
                    : new Parsed.Unreadable(mismatch(code, wanted)));
  }

  private static Why mismatch(String code, Unit wanted) {
    boolean milliOrMega = code.indexOf('m') >= 0 || code.indexOf('M') >= 0;
    return coded(wanted) && milliOrMega ? Why.CASE_UNCLEAR : Why.WRONG_UNIT;
  }

  private static Optional<CodedValue> readTidy(String tidy) {
    Matcher code = CODE.matcher(tidy);
    if (!code.matches() || (code.group(1) + code.group(3)).isEmpty()) {
      return Optional.empty();
    }
    char letter = code.group(2).charAt(0);
    Unit unit = "pnumF".indexOf(letter) >= 0 ? Unit.FARAD : Unit.OHM;
    String number = "0" + code.group(1) + "." + code.group(3) + "e" + power(letter);
    return Optional.of(new CodedValue(Double.parseDouble(number), unit, tolerance(code.group(4))));
  }

  private static int power(char letter) {
    return switch (letter) {
      case 'p' -> -12;
      case 'n' -> -9;
      case 'u' -> -6;
      case 'm' -> -3;
      case 'K', 'k' -> 3;
      case 'M' -> 6;
      case 'G' -> 9;
      default -> 0;
    };
  }

  private static OptionalDouble tolerance(String letter) {
    return switch (letter) {
      case "B" -> OptionalDouble.of(0.001);
      case "C" -> OptionalDouble.of(0.0025);
      case "D" -> OptionalDouble.of(0.005);
      case "F" -> OptionalDouble.of(0.01);
      case "G" -> OptionalDouble.of(0.02);
      case "J" -> OptionalDouble.of(0.05);
      case "K" -> OptionalDouble.of(0.1);
      case "M" -> OptionalDouble.of(0.2);
      default -> OptionalDouble.empty();
    };
  }
}
