package org.holewise.engine.exercise;

import org.holewise.engine.part.Pin;

/** What is measured and where. */
public sealed interface Measure {

  /** DC voltage, red lead first (V). */
  record Volts(Probe red, Probe black) implements Measure {}

  /** DC current into a pin, the meter in series at it (A). */
  record Amps(Pin pin) implements Measure {}

  /** Resistance, the supply off (Ω); {@code alone}: the part out of the board. */
  record Ohms(Probe one, Probe other, boolean alone) implements Measure {}

  /** The buzzer: whether two points are joined, the supply off. */
  record Joined(Probe one, Probe other) implements Measure {}

  /** What a lamp does, by eye. */
  record Seen(String ref) implements Measure {}
}
