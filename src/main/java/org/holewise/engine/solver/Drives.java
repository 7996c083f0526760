package org.holewise.engine.solver;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.holewise.engine.part.Level;

/**
 * What the outputs of a circuit's logic drive, by part and output.
 *
 * @param levels by part; parts without logic have none
 * @param doubt what an undefined output is solved as
 * @param holds capacitors that stand at a voltage
 */
record Drives(List<List<Level>> levels, boolean doubt, List<Hold> holds) {
  static final Drives NONE = new Drives(List.of(), false, List.of());

  /** A capacitor of a part, by its place there, and its voltage (V). */
  record Hold(int part, int capacitor, double volts) {}

  Drives holding(List<Hold> others) {
    return new Drives(levels, doubt, others);
  }

  /** Whether an output drives high; empty where it drives nothing. */
  Optional<Boolean> of(int part, int output) {
    Level level =
        part < levels.size() && output < levels.get(part).size()
            ? levels.get(part).get(output)
            : Level.OPEN;
    return switch (level) {
      case HIGH -> Optional.of(true);
      case LOW -> Optional.of(false);
      case UNDEFINED -> Optional.of(doubt);
      case OPEN -> Optional.empty();
    };
  }

  boolean undefined() {
    return levels.stream().anyMatch(own -> own.contains(Level.UNDEFINED));
  }

  Drives doubting(boolean high) {
    return new Drives(levels, high, holds);
  }

  static List<List<Level>> copy(Level[][] levels) {
    return Arrays.stream(levels).map(List::of).toList();
  }
}
