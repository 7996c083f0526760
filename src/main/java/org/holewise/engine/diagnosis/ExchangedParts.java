package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.part.Part;
import org.holewise.engine.reading.Assembly;

/** Two parts of one kind, each of which is where the other should be. */
final class ExchangedParts {
  /** What parts of a kind differ in that can be told by their readings. */
  private static final Map<String, List<String>> TOLD =
      Map.of(
          "resistor", List.of("ohms"),
          "potentiometer", List.of("ohms"),
          "capacitor", List.of("farads"),
          "electrolytic", List.of("farads"),
          "inductor", List.of("henries"),
          "led", List.of("colour", "forward"),
          "diode", List.of("type", "forward"),
          "zener", List.of("breakdown"));

  private ExchangedParts() {}

  static List<Hypothesis> of(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    List<Part> parts = scene.exercise().parts();
    for (int i = 0; i < parts.size(); i++) {
      for (int j = i + 1; j < parts.size(); j++) {
        Assembly exchanged = exchanged(scene.record(), parts.get(i), parts.get(j));
        if (exchanged != scene.record()) {
          all.add(
              Hypothesis.of(
                  Family.EXCHANGED,
                  new Place.OfParts(parts.get(i).ref(), parts.get(j).ref()),
                  "swapped-parts",
                  1,
                  holes(scene, parts.get(i), parts.get(j)),
                  exchanged));
        }
      }
    }
    return all;
  }

  /** The same assembly where nothing tells the two apart. */
  private static Assembly exchanged(Assembly record, Part one, Part other) {
    if (one.kind() != other.kind()) {
      return record;
    }
    Assembly exchanged = record;
    for (String field : TOLD.getOrDefault(one.kind().name(), List.of())) {
      Object first = one.fields().values().get(field);
      Object second = other.fields().values().get(field);
      if (first != null && second != null && !first.equals(second)) {
        exchanged = exchanged.changed(one.ref(), field, second).changed(other.ref(), field, first);
      }
    }
    return exchanged;
  }

  private static List<Hole> holes(Scene scene, Part one, Part other) {
    return Stream.of(one, other).flatMap(part -> PartFaults.holes(scene, part).stream()).toList();
  }
}
