package org.holewise.engine.part;

/** How a part sits on a board. */
public sealed interface Footprint {

  /** Leads that bend to any holes from {@code least} to {@code most} columns apart. */
  record Leads(int least, int most) implements Footprint {}

  /** Leads in one line, neighbouring columns. */
  record InLine(int pins) implements Footprint {}

  /** Wires or clips from beside the board. */
  record Wires() implements Footprint {}

  /**
   * A package with two rows of pins that straddles the groove: pins run up one row and back down
   * the other.
   *
   * @param pins how many, an even number
   * @param rowSpacing between the rows, in steps of the board's pitch: 3 for the narrow package
   */
  record Dip(int pins, int rowSpacing) implements Footprint {
    /** Row spacing of the usual narrow package, 7.62 mm: it spans the groove from row e to f. */
    public static final int NARROW = 3;

    public Dip(int pins) {
      this(pins, NARROW);
    }
  }

  /** A push button: two pairs that face each other across the groove. */
  record AcrossGroove(int columns) implements Footprint {}
}
