package org.holewise.document.lines;

import org.holewise.engine.exercise.Measure;

/** How a measure is written in a typed line. */
public final class Measures {
  private Measures() {}

  /** Its kind and points, such as {@code volts R1.2 f13}. */
  public static String written(Measure measure) {
    if (measure instanceof Measure.Volts m) {
      return "volts " + m.red() + " " + m.black();
    }
    if (measure instanceof Measure.Amps m) {
      return "amps " + m.pin();
    }
    if (measure instanceof Measure.Ohms m) {
      return "ohms " + (m.alone() ? "alone " : "") + m.one() + " " + m.other();
    }
    if (measure instanceof Measure.Joined m) {
      return "joined " + m.one() + " " + m.other();
    }
    return "seen " + ((Measure.Seen) measure).ref();
  }

  /** The SI unit it is read in; empty for a word. */
  static String unit(Measure measure) {
    if (measure instanceof Measure.Volts) {
      return "V";
    }
    if (measure instanceof Measure.Amps) {
      return "A";
    }
    return measure instanceof Measure.Ohms ? "ohm" : "";
  }
}
