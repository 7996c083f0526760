package org.holewise.drawing.sheet;

import java.util.Locale;

/**
 * The sizes of texts and how wide a text of them is: widths of a wide common sans (DejaVu Sans, as
 * a browser measured them), so that a text in a narrower face has room to spare.
 */
public enum TextSize {
  REF(12),
  VALUE(12),
  NET(11),
  PIN(10),
  NUMBER(9);

  /** Hundredths of the size, from the space to the tilde. */
  private static final int[] WIDTHS = {
    32, 40, 46, 84, 64, 95, 78, 27, 39, 39, 50, 84, 32, 36, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64,
    64, 64, 34, 34, 84, 84, 84, 53, 100, 68, 69, 70, 77, 63, 58, 77, 75, 29, 29, 66, 56, 86, 75, 79,
    60, 79, 69, 63, 61, 73, 68, 99, 69, 61, 69, 39, 34, 39, 84, 50, 50, 61, 63, 55, 63, 62, 35, 63,
    63, 28, 28, 58, 28, 97, 63, 61, 63, 63, 41, 52, 39, 63, 59, 82, 59, 59, 52, 64, 34, 64, 84
  };

  /** The widest of the other letters that parts and nets are likely to have: a capital omega. */
  private static final int OTHER = 84;

  /**
   * How far capitals and digits reach above the baseline, and what hangs below it (of the size).
   */
  private static final double ASCENT = 0.76;

  private static final double DESCENT = 0.24;

  private final int px;

  TextSize(int px) {
    this.px = px;
  }

  /** Its size (px). */
  public int px() {
    return px;
  }

  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public double width(String text) {
    int sum = text.codePoints().map(TextSize::each).sum();
    return sum * px / 100.0;
  }

  private static int each(int letter) {
    int at = letter - ' ';
    return at >= 0 && at < WIDTHS.length ? WIDTHS[at] : OTHER;
  }

  /** What a text covers that begins, is centred or ends at {@code x}. */
  public Area extent(String text, String anchor, double x, double baseline) {
    double width = width(text);
    double left =
        switch (anchor) {
          case "middle" -> x - width / 2;
          case "end" -> x - width;
          default -> x;
        };
    return new Area(left, baseline - ASCENT * px, width, (ASCENT + DESCENT) * px);
  }
}
