package org.holewise.document.lines;

import java.util.StringJoiner;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Occasion;
import org.holewise.engine.quantity.Unit;

/** How a measure is written in a typed line. */
public final class Measures {
  private Measures() {}

  /** Its kind and points, such as {@code volts R1.2 f13}. */
  public static String written(Measure measure) {
    var words = new StringJoiner(" ").add(measure.key());
    if (measure instanceof Measure.Seen seen) {
      words.add(seen.ref());
    }
    if (measure instanceof Measure.Ohms ohms && ohms.alone()) {
      words.add("alone");
    }
    measure.points().forEach(point -> words.add(point.toString()));
    if (measure instanceof Measure.Compared compared && !compared.choice().isEmpty()) {
      words.add(compared.choice());
    }
    return words.toString();
  }

  /** What is said of pulses and frequency, each with a blank before it; empty for neither. */
  static String written(Occasion occasion) {
    String after = occasion.after() > 0 ? " after " + occasion.after() : "";
    return occasion.hertz().isPresent() ? after + " at " + hertz(occasion) : after;
  }

  private static String hertz(Occasion occasion) {
    double hertz = occasion.hertz().orElseThrow();
    boolean whole = hertz == Math.rint(hertz) && hertz < 1e9;
    return (whole ? String.valueOf((long) hertz) : String.valueOf(hertz)) + "Hz";
  }

  /** The SI unit it is read in; empty for a word. */
  static String unit(Measure measure) {
    return measure.unit().map(unit -> unit == Unit.OHM ? "ohm" : unit.symbol()).orElse("");
  }
}
