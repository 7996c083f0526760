package org.holewise.engine.quantity;

import java.util.Locale;
import java.util.Optional;

/**
 * A unit that a document, a reading or a page may carry. Values are always held in the unit itself,
 * without prefix; a {@link #FRACTION} is held as a fraction and written in per cent.
 */
public enum Unit {
  VOLT("V", true),
  AMP("A", true),
  OHM("Ω", true),
  FARAD("F", true),
  HENRY("H", true),
  HERTZ("Hz", true),
  SECOND("s", true),
  WATT("W", true),
  DECIBEL("dB", false),
  FRACTION("%", false),
  CELSIUS("°C", false),
  COUNT("", true);

  private final String symbol;
  private final boolean prefixed;

  Unit(String symbol, boolean prefixed) {
    this.symbol = symbol;
    this.prefixed = prefixed;
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
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "v", "volt", "volts" -> Optional.of(VOLT);
      case "a", "amp", "amps", "ampere", "amperes" -> Optional.of(AMP);
      // the small omega is the lower case of both code points of the sign, U+03A9 and U+2126
      case "\u03c9", "ohm", "ohms", "r" -> Optional.of(OHM);
      case "f", "farad", "farads" -> Optional.of(FARAD);
      case "h", "henry", "henries", "henrys" -> Optional.of(HENRY);
      case "hz", "hertz" -> Optional.of(HERTZ);
      case "s", "sec", "second", "seconds" -> Optional.of(SECOND);
      case "w", "watt", "watts" -> Optional.of(WATT);
      case "db", "decibel", "decibels" -> Optional.of(DECIBEL);
      case "%", "percent" -> Optional.of(FRACTION);
      case "°c", "c" -> Optional.of(CELSIUS);
      default -> Optional.empty();
    };
  }
}
