package org.holewise.document.lines;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.holewise.engine.exercise.BenchRecord;

/**
 * Typed lines as read: every line, the record that the sound ones make, and where each of its
 * entries was typed. Immutable.
 *
 * @param places line numbers by JSON pointer into the request, such as {@code /build/placed/2}
 */
public record Sheet(List<Line> lines, BenchRecord record, Map<String, Integer> places) {
  public Sheet {
    lines = List.copyOf(lines);
    places = Map.copyOf(places);
  }

  /** Whether every line could be used. */
  public boolean sound() {
    return lines.stream().allMatch(line -> line.problem().isEmpty());
  }

  /** The line on which the entry at a pointer, or the entry it is part of, was typed. */
  public OptionalInt lineOf(String pointer) {
    String at = pointer;
    while (!at.isEmpty()) {
      Integer line = places.get(at);
      if (line != null) {
        return OptionalInt.of(line);
      }
      at = at.substring(0, Math.max(0, at.lastIndexOf('/')));
    }
    return OptionalInt.empty();
  }
}
