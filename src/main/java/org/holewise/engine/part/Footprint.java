package org.holewise.engine.part;

/** How a part sits on a board. */
public sealed interface Footprint {

  /** Leads that bend to any holes from {@code least} to {@code most} columns apart. */
  record Leads(int least, int most) implements Footprint {}

  /** Leads in one line, neighbouring columns. */
  record InLine(int pins) implements Footprint {}

  /** Wires or clips from beside the board. */
  record Wires() implements Footprint {}

  /** A push button: two pairs that face each other across the groove. */
  record AcrossGroove(int columns) implements Footprint {}
}
