package org.holewise.engine.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.holewise.engine.quantity.Parsed.Why;

/**
 * Reads what a student wrote down from a meter. As {@link QuantityText}, with a trailing {@code DC}
 * allowed, but what stays ambiguous is unreadable, so that the page asks instead of guessing:
 *
 * <ul>
 *   <li>a comma with one to three figures before and exactly three after ({@code 1,000 V}): decimal
 *       or thousands; {@code 0,620 V} is read, since no thousands begin with zero;
 *   <li>an {@code M} on anything but ohms and hertz ({@code 9.9 MA}), an {@code m} on those two:
 *       students mix the cases, and hand meters show neither megavolts nor milliohms; a prefix in
 *       words is never unclear;
 *   <li>a number without prefix and unit, unless its magnitude settles it.
 * </ul>
 *
 * <p>The magnitude settles a bare number in three cases. Zero is zero in any unit. A plain count
 * has no unit to write. Volts are volts when the number has at least two decimals, is at least 0.1
 * and at most the meter's full scale: a hand meter resolves a tenth of a millivolt at best, so
 * {@code 2.04} did not come from a millivolt range, while {@code 1.5} may have. Nothing settles
 * amps or ohms: {@code 9.9} is as likely a milliamp reading as {@code 4.70} a kilohm one.
 */
public final class ReadingText {

  private static final Pattern OVER_RANGE = Pattern.compile("-?+ *+[oO0]\\.?+[lL](.*+)");
  private static final double LEAST_BARE_VOLTS = 0.1;
  private static final int LEAST_BARE_DECIMALS = 2;

  private ReadingText() {}

  /** What became of a reading. Immutable. */
  public sealed interface Result permits Value, OverRange, Unreadable {}

  /**
   * A reading with a value.
   *
   * @param si in the wanted unit, without prefix; finite, and never negative zero
   */
  public record Value(double si) implements Result {}

  /** The meter said that its range is exceeded: {@code OL}. */
  public record OverRange() implements Result {}

  /** A text that the page must ask about. */
  public record Unreadable(Why why) implements Result {}

  /**
   * The text as a reading in the wanted unit.
   *
   * @param fullScaleOfMeter of the meter's largest range, in the wanted unit
   */
  public static Result parse(String text, Unit wanted, double fullScaleOfMeter) {
    Optional<String> tidy = Numeral.tidy(text);
    if (tidy.isEmpty()) {
      return new Unreadable(Why.NOT_A_NUMBER);
    }
    if (tidy.get().isEmpty()) {
      return new Unreadable(Why.EMPTY);
    }
    return overRange(tidy.get(), wanted)
        .orElseGet(() -> result(parsed(tidy.get(), wanted, fullScaleOfMeter)));
  }

  /**
   * What one unit in the last place written is worth (SI); 0 where the text is no plain number. It
   * tells the range that a meter was on: {@code 0.07 V} was not read off one of 200 mV.
   */
  public static double step(String text) {
    Optional<Numeral> numeral = Numeral.tidy(text).map(Numeral::scan);
    if (numeral.isEmpty()
        || numeral.get().fault().isPresent()
        || !numeral.get().exponent().isEmpty()) {
      return 0;
    }
    return suffix(numeral.get().rest())
        .map(suffix -> suffix.power() - numeral.get().fraction().length())
        .map(power -> Double.parseDouble("1e" + power))
        .orElse(0.0);
  }

  private static Optional<Result> overRange(String tidy, Unit wanted) {
    Matcher matcher = OVER_RANGE.matcher(tidy);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    return suffix(matcher.group(1))
        .map(suffix -> suffix.suits(wanted) ? new OverRange() : new Unreadable(Why.WRONG_UNIT));
  }

  private static Result result(Parsed parsed) {
    if (parsed instanceof Parsed.Value value) {
      return new Value(value.si());
    }
    return new Unreadable(((Parsed.Unreadable) parsed).why());
  }

  private static Parsed parsed(String tidy, Unit wanted, double fullScale) {
    return LetterCode.parse(tidy, wanted)
        .orElseGet(() -> number(Numeral.scan(tidy), wanted, fullScale));
  }

  private static Parsed number(Numeral numeral, Unit wanted, double fullScale) {
    Optional<Suffix> found = suffix(numeral.rest()).filter(suffix -> suffix.suits(wanted));
    Optional<Why> why = numeral.fault().or(() -> unclear(numeral, found, wanted));
    if (why.isPresent()) {
      return new Parsed.Unreadable(why.get());
    }
    Suffix suffix = found.orElseThrow();
    Parsed parsed = numeral.times(suffix.power());
    boolean settled = !suffix.isEmpty() || settled(numeral, parsed, wanted, fullScale);
    return settled ? parsed : new Parsed.Unreadable(Why.UNIT_NEEDED);
  }

  private static Optional<Why> unclear(Numeral numeral, Optional<Suffix> suffix, Unit wanted) {
    if (suffix.isEmpty()) {
      return Optional.of(Why.WRONG_UNIT);
    }
    if (perhapsThousands(numeral)) {
      return Optional.of(Why.AMBIGUOUS_SEPARATOR);
    }
    return suffix.filter(found -> caseUnclear(found, wanted)).map(found -> Why.CASE_UNCLEAR);
  }

  private static Optional<Suffix> suffix(String rest) {
    String compact = rest.replace(" ", "");
    boolean direct = compact.toLowerCase(Locale.ROOT).endsWith("dc");
    return Suffix.read(direct ? compact.substring(0, compact.length() - 2) : compact);
  }

  private static boolean perhapsThousands(Numeral numeral) {
    return numeral.mark().equals(",")
        && numeral.fraction().length() == 3
        && numeral.whole().matches("[1-9][0-9]{0,2}");
  }

  private static boolean caseUnclear(Suffix suffix, Unit wanted) {
    boolean mega = wanted == Unit.OHM || wanted == Unit.HERTZ;
    return !suffix.spelled() && suffix.power() == (mega ? -3 : 6);
  }

  private static boolean settled(Numeral numeral, Parsed parsed, Unit wanted, double fullScale) {
    if (!(parsed instanceof Parsed.Value value) || value.si() == 0 || wanted == Unit.COUNT) {
      return true;
    }
    double size = Math.abs(value.si());
    return wanted == Unit.VOLT
        && numeral.fraction().length() >= LEAST_BARE_DECIMALS
        && size >= LEAST_BARE_VOLTS
        && size <= fullScale;
  }
}
