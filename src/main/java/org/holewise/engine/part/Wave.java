package org.holewise.engine.part;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The shapes that a generator puts out, each symmetric about its offset. */
public enum Wave {
  SINE(StrictMath.sqrt(0.5)),
  SQUARE(1),
  TRIANGLE(StrictMath.sqrt(1.0 / 3));

  private final double rms;

  Wave(double rms) {
    this.rms = rms;
  }

  /** Root mean square over peak. */
  public double rms() {
    return rms;
  }

  /** As written in an exercise. */
  String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Wave of(Part part) {
    String key = part.fields().text("wave").orElse(SINE.key());
    return Stream.of(values()).filter(wave -> wave.key().equals(key)).findFirst().orElse(SINE);
  }

  static List<String> keys() {
    return Stream.of(values()).map(Wave::key).toList();
  }
}
