package org.holewise.engine.marking;

import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.netlist.Schematic;
import org.holewise.engine.reading.Assembly;

/** What an exercise itself may do to the person at it. */
public final class Danger {
  /** Difference between two points above which an exercise needs leave (V; rounding let go). */
  public static final double MOST_VOLTS = 30 + 1e-6;

  private Danger() {}

  /** Greatest difference between two nets of the schematic in any of its conditions (V). */
  public static double greatestVolts(Exercise exercise) {
    return Cautions.greatest(
        Assembly.of(exercise, Schematic.netlist(exercise), Assembly.HoleNets.NONE));
  }
}
