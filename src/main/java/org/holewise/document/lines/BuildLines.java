package org.holewise.document.lines;

import java.util.List;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;

/**
 * A build as typed lines:
 *
 * <pre>
 * # a note
 * R1 f8 f12                  a part: a hole for each pin, in the kind's order
 * D1 a=g12 k=g14             or by the pins' names
 * R1 f8 f12 marked 390R      what was read off it
 * U1 e20                     a chip by the hole of its pin 1
 * link f14 e14
 * lamp-volts 2.04 V          a reading: its id, then what was read
 * extra volts R1.2 f13 0.4 V when dark
 * board 400                  where it is not the exercise's
 * meter hand-2000
 * </pre>
 *
 * Capitals and spacing do not matter, except inside what was read. A name alone is an entry not yet
 * filled in, not an error.
 */
public final class BuildLines {
  private BuildLines() {}

  /** Reads lines; what is wrong with one stays beside it and the rest is used. */
  public static Sheet read(String text, Exercise exercise) {
    var reader = new LineReader(exercise);
    var gathering = new Gathering(exercise);
    List<String> typed = text.lines().toList();
    for (int i = 0; i < typed.size(); i++) {
      gathering.add(i + 1, typed.get(i), reader.read(typed.get(i)));
    }
    return gathering.sheet();
  }

  /**
   * Prints a record as lines that read as the same record. A reading that was sent as a plain
   * number gets its unit; what was read loses line breaks and doubled spaces.
   */
  public static String write(BenchRecord record, Exercise exercise) {
    return new LineWriter(exercise).write(record);
  }
}
