package org.holewise.school.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Point;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.part.Pin;

/** Where the leads of the meter go for a reading, as marks on a schematic. */
public record Probing(String reading, List<Touch> touches) {

  /** Readings that do not change when the leads of the meter do. */
  private static final List<String> EITHER_WAY = List.of("ohms", "joined");

  /**
   * A lead of the meter.
   *
   * @param lead red, black, meter (in series) or either
   * @param letter what is written in it
   */
  public record Touch(String lead, String letter, Point at) {}

  /** Of every reading with a point that is drawn. */
  static List<Probing> all(Exercise exercise, Drawing drawing) {
    var ends = new LinkedHashMap<Pin, Point>();
    drawing
        .figures()
        .forEach(figure -> figure.ends().forEach(end -> ends.put(end.pin(), end.at())));
    return exercise.readings().stream()
        .map(reading -> new Probing(reading.id(), touches(reading.measure(), ends)))
        .filter(probing -> !probing.touches.isEmpty())
        .toList();
  }

  private static List<Touch> touches(Measure measure, Map<Pin, Point> ends) {
    List<Probe> points = measure.points();
    var touches = new ArrayList<Touch>();
    for (int i = 0; i < points.size(); i++) {
      String lead = lead(measure, i);
      String letter = letter(lead, points.size() > 2 ? String.valueOf(i / 2 + 1) : "");
      at(points.get(i), ends)
          .filter(at -> touches.stream().noneMatch(other -> other.at().equals(at)))
          .ifPresent(at -> touches.add(new Touch(lead, letter, at)));
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

  private static Optional<Point> at(Probe point, Map<Pin, Point> ends) {
    return point instanceof Probe.AtPin pin
        ? Optional.ofNullable(ends.get(pin.pin()))
        : Optional.empty();
  }
}
