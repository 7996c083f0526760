package org.holewise.school.sheet;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.part.Pin;

/** At which pins the leads of the meter go for a reading. */
public record Probing(String reading, List<Touch> touches) {

  /** Readings that do not change when the leads of the meter do. */
  private static final List<String> EITHER_WAY = List.of("ohms", "joined");

  /**
   * A lead of the meter.
   *
   * @param lead red, black, meter (in series) or either
   * @param letter what is written in it
   */
  public record Touch(String lead, String letter, Pin pin) {

    /** {@code R1 2} */
    public String named() {
      return Signs.shown(pin);
    }
  }

  /** Of every reading that is taken at a pin. */
  static List<Probing> all(Exercise exercise) {
    return exercise.readings().stream()
        .map(reading -> new Probing(reading.id(), touches(reading.measure())))
        .filter(probing -> !probing.touches.isEmpty())
        .toList();
  }

  /** One a pin: what two voltages are measured against is touched once. */
  private static List<Touch> touches(Measure measure) {
    List<Probe> points = measure.points();
    var touches = new ArrayList<Touch>();
    for (int i = 0; i < points.size(); i++) {
      String lead = lead(measure, i);
      String letter = letter(lead, points.size() > 2 ? String.valueOf(i / 2 + 1) : "");
      if (points.get(i) instanceof Probe.AtPin at
          && touches.stream().noneMatch(other -> other.pin().equals(at.pin()))) {
        touches.add(new Touch(lead, letter, at.pin()));
      }
    }
    return List.copyOf(touches);
  }

  private static String lead(Measure measure, int place) {
    if (measure instanceof Measure.Amps) {
      return "meter";
    }
    if (EITHER_WAY.contains(measure.key())) {
      return "either";
    }
    return place % 2 == 0 ? "red" : "black";
  }

  private static String letter(String lead, String pair) {
    return switch (lead) {
      case "red" -> "R" + pair;
      case "black" -> "B" + pair;
      case "meter" -> "A";
      default -> "";
    };
  }
}
