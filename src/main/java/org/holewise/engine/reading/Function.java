package org.holewise.engine.reading;

import java.util.Locale;

/**
 * A function of a multimeter, or of the scope beside it; its gain error is common to all its
 * readings. A ratio is made of two readings of one function.
 */
public enum Function {
  VOLTS,
  AMPS,
  OHMS,
  DROP,
  ACVOLTS,
  PEAK,
  RATIO,
  DECIBELS,
  FREQUENCY;

  String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
