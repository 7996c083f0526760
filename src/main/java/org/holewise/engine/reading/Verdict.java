package org.holewise.engine.reading;

import java.util.Locale;

/** What became of a reading. */
public enum Verdict {
  WITHIN,
  UNUSUAL,
  OUTSIDE,
  OVER_RANGE,
  MISSING,
  UNREADABLE;

  /** As in the mark: {@code within}, {@code over-range} … */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public boolean earns() {
    return this == WITHIN || this == UNUSUAL;
  }
}
