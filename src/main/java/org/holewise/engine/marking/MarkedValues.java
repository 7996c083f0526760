package org.holewise.engine.marking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.engine.board.Finding;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.part.Part;
import org.holewise.engine.quantity.Parsed;
import org.holewise.engine.quantity.QuantityText;
import org.holewise.engine.quantity.Unit;
import org.holewise.engine.reading.Assembly;

/**
 * What was read off parts where it differs from the schematic's value: then the part on the board
 * is the one that was read, and the readings are judged with it.
 *
 * @param ohms by ref (Ω)
 */
record MarkedValues(Map<String, Double> ohms, List<Finding> findings) {

  static MarkedValues of(Exercise exercise, BenchRecord record) {
    Map<String, Double> otherwise = new LinkedHashMap<>();
    var findings = new ArrayList<Finding>();
    List<Placed> placed = record.build().map(build -> build.placed()).orElse(List.of());
    for (int i = 0; i < placed.size(); i++) {
      String text = placed.get(i).marked().orElse("");
      var part = exercise.part(placed.get(i).ref());
      if (text.isBlank() || part.isEmpty() || !part.get().kind().name().equals("resistor")) {
        continue;
      }
      String at = "/build/placed/" + i + "/marked";
      if (QuantityText.parse(text, Unit.OHM) instanceof Parsed.Value value && value.si() > 0) {
        if (differs(part.get(), value.si())) {
          otherwise.put(part.get().ref(), value.si());
          findings.add(Finding.of(at, "marked-otherwise", part.get().ref(), text));
        }
      } else {
        findings.add(Finding.of(at, "marked-unreadable", part.get().ref(), text));
      }
    }
    return new MarkedValues(otherwise, findings);
  }

  private static boolean differs(Part part, double marked) {
    return Math.abs(marked / part.number("ohms") - 1) > 1e-6;
  }

  Assembly on(Assembly assembly) {
    Assembly marked = assembly;
    for (var entry : ohms.entrySet()) {
      marked = marked.changed(entry.getKey(), "ohms", entry.getValue());
    }
    return marked;
  }
}
