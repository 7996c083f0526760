package org.holewise.engine.reading;

import java.util.Locale;

/** A function of a multimeter; its gain error is common to all its readings. */
public enum Function {
  VOLTS,
  AMPS,
  OHMS;

  String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
