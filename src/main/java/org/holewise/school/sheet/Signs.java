package org.holewise.school.sheet;

import org.holewise.engine.part.Pin;

/** Pins as they are printed: with a minus that is as wide as the plus. */
public final class Signs {
  private Signs() {}

  public static String shown(String pin) {
    return pin.replace('-', '−');
  }

  /** {@code B1 +}, never broken over two lines. */
  public static String shown(Pin pin) {
    return pin.ref() + "\u00a0" + shown(pin.name());
  }
}
