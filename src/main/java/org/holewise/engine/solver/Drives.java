package org.holewise.engine.solver;

import java.util.ArrayList;
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

  /** The same without outputs that nothing hangs on. */
  Drives where(boolean[][] loaded) {
    var felt = new ArrayList<List<Level>>();
    for (int part = 0; part < levels.size(); part++) {
      List<Level> own = new ArrayList<>(levels.get(part));
      for (int output = 0; output < own.size(); output++) {
        own.set(output, loaded[part][output] ? own.get(output) : Level.OPEN);
      }
      felt.add(List.copyOf(own));
    }
    return new Drives(List.copyOf(felt), doubt, holds);
  }

  /** Whether the two differ in nothing but the voltages of what is held. */
  boolean shapedAs(Drives other) {
    boolean same =
        this == other
            || doubt == other.doubt
                && holds.size() == other.holds.size()
                && levels.equals(other.levels);
    for (int k = 0; same && k < holds.size(); k++) {
      same =
          holds.get(k).part() == other.holds.get(k).part()
              && holds.get(k).capacitor() == other.holds.get(k).capacitor();
    }
    return same;
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
