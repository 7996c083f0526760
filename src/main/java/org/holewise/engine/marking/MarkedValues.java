package org.holewise.engine.marking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.holewise.engine.board.Finding;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.part.Part;
import org.holewise.engine.quantity.Colour;
import org.holewise.engine.quantity.ColourCode;
import org.holewise.engine.quantity.LetterCode;
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
      OptionalDouble marked = ohms(text);
      if (marked.isEmpty()) {
        findings.add(Finding.of(at, "marked-unreadable", part.get().ref(), text));
      } else if (differs(part.get(), marked.getAsDouble())) {
        otherwise.put(part.get().ref(), marked.getAsDouble());
        findings.add(Finding.of(at, "marked-otherwise", part.get().ref(), text));
      }
    }
    return new MarkedValues(otherwise, findings);
  }

  /** A value, a letter code with or without its tolerance, or the colours of the bands in words. */
  private static OptionalDouble ohms(String text) {
    if (QuantityText.parse(text, Unit.OHM) instanceof Parsed.Value value) {
      return value.si() > 0 ? OptionalDouble.of(value.si()) : OptionalDouble.empty();
    }
    var coded = LetterCode.read(text).filter(code -> code.unit() == Unit.OHM);
    if (coded.isPresent()) {
      return OptionalDouble.of(coded.get().value());
    }
    var bands = new ArrayList<Colour>();
    for (String word : text.strip().toUpperCase(Locale.ROOT).split("[ ,-]+", -1)) {
      for (Colour colour : Colour.values()) {
        if (colour.name().equals(word)) {
          bands.add(colour);
        }
      }
    }
    var resistor = ColourCode.read(bands).resistor();
    return resistor.isPresent() ? OptionalDouble.of(resistor.get().ohms()) : OptionalDouble.empty();
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
