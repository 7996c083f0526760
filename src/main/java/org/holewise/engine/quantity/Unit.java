package org.holewise.engine.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A unit that a document, a reading or a page may carry. Values are always held in the unit itself,
 * without prefix; a {@link #FRACTION} is held as a fraction and written in per cent.
 */
public enum Unit {
  VOLT("V", true, "v", "volt", "volts"),
  AMP("A", true, "a", "amp", "amps", "ampere", "amperes"),
  /** Lower case of both code points of the sign, U+03A9 and U+2126, is U+03C9. */
  OHM("Ω", true, "\u03c9", "ohm", "ohms", "r"),
  FARAD("F", true, "f", "farad", "farads"),
  HENRY("H", true, "h", "henry", "henries", "henrys"),
  HERTZ("Hz", true, "hz", "hertz"),
  SECOND("s", true, "s", "sec", "second", "seconds"),
  WATT("W", true, "w", "watt", "watts"),
  DECIBEL("dB", false, "db", "decibel", "decibels"),
  FRACTION("%", false, "%", "percent"),
  CELSIUS("°C", false, "°c", "c"),
  COUNT("", true);

  private final String symbol;
  private final boolean prefixed;
  private final List<String> names;

  Unit(String symbol, boolean prefixed, String... names) {
    this.symbol = symbol;
    this.prefixed = prefixed;
    this.names = List.of(names);
  }

  /** The symbol that follows a number on a page; empty for a plain count. */
  public String symbol() {
    return symbol;
  }

  /** Whether SI prefixes are used with it. */
  boolean prefixed() {
    return prefixed;
  }

  /** The unit of that symbol or English name, whatever the case. */
  static Optional<Unit> named(String text) {
    String name = text.toLowerCase(Locale.ROOT);
    for (Unit unit : values()) {
      if (unit.names.contains(name)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }
}
