package org.holewise.engine.marking;

import org.holewise.engine.exercise.Exercise;

/** What an exercise itself may do to the person at it. */
public final class Danger {
  /** Difference between two points above which an exercise needs leave (V; rounding let go). */
  public static final double MOST_VOLTS = 30 + 1e-6;

  private Danger() {}

  /** Greatest difference between two nets of the schematic in any of its conditions (V). */
  public static double greatestVolts(Exercise exercise) {
    return Cautions.greatest(Marking.wanted(exercise));
  }
}
