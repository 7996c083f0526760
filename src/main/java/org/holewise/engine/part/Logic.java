package org.holewise.engine.part;

/**
 * What a chip decides: from the levels at its inputs, step after step, what its outputs drive.
 * Inputs, outputs and cells of its memory are numbered from 0. Stateless; the arrays belong to the
 * caller.
 */
public interface Logic {

  int inputs();

  int outputs();

  /** The memory as it is when the supply comes on; an exercise begins with a chip cleared. */
  Level[] start();

  /** Whether it works at a supply (V). */
  boolean works(double supply);

  /** Whether it is dead at a supply (V), so that its outputs drive nothing. */
  boolean dead(double supply);

  /**
   * The level that an input takes a voltage for.
   *
   * @param volts at the inputs, over the minus pin (V)
   * @param before what it was taken for last, for inputs with hysteresis
   */
  Level read(int input, double[] volts, double supply, Level before);

  /** Up to which voltage over its minus pin a wire counts as low at a supply (V). */
  double low(double supply);

  /** From which voltage over its minus pin a wire counts as high at a supply (V). */
  double high(double supply);

  /** What an input is taken for that nothing drives. */
  Level open(int input);

  /**
   * One step: what memory and outputs become after these inputs.
   *
   * @param memory in and out
   * @param out out: what each output drives
   */
  void step(Level[] in, Level[] memory, Level[] out);

  /** Makes it see its clocks as for the first time: no edge comes of what they are now. */
  default void forget(Level[] memory) {}

  /**
   * Whether an input has two thresholds apart, so that a capacitor at it can swing between them.
   */
  default boolean waits(int input) {
    return false;
  }
}
