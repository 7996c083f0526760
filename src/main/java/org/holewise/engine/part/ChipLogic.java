package org.holewise.engine.part;

import java.util.List;

/**
 * The logic of a chip of some family, from a function of one step. Memory is the cells that the
 * chip keeps, then what each clock was last.
 *
 * @param schmitt whether all inputs have hysteresis
 * @param cells as they are when cleared
 */
record ChipLogic(
    Family family,
    boolean schmitt,
    int inputs,
    int outputs,
    List<Level> cells,
    int clocks,
    Steps steps)
    implements Logic {

  /** As {@link Logic#step}. */
  interface Steps {
    void step(Level[] in, Level[] memory, Level[] out);
  }

  @Override
  public Level[] start() {
    Level[] memory = cells.toArray(new Level[cells.size() + clocks]);
    forget(memory);
    return memory;
  }

  @Override
  public boolean works(double supply) {
    return family.works(supply);
  }

  @Override
  public boolean dead(double supply) {
    return family.dead(supply);
  }

  @Override
  public Level read(int input, double[] volts, double supply, Level before) {
    return schmitt ? family.read(volts[input], supply, before) : family.read(volts[input], supply);
  }

  @Override
  public double low(double supply) {
    return (schmitt ? family.schmitt(supply) : family.threshold(supply)).low();
  }

  @Override
  public double high(double supply) {
    return (schmitt ? family.schmitt(supply) : family.threshold(supply)).high();
  }

  @Override
  public Level open(int input) {
    return family.bipolar() ? Level.HIGH : Level.UNDEFINED;
  }

  @Override
  public void step(Level[] in, Level[] memory, Level[] out) {
    steps.step(in, memory, out);
  }

  @Override
  public void forget(Level[] memory) {
    for (int clock = cells.size(); clock < memory.length; clock++) {
      memory[clock] = Level.OPEN;
    }
  }

  @Override
  public boolean waits(int input) {
    return schmitt;
  }

  /**
   * Whether a clock has just risen, or fallen: undefined where it may have.
   *
   * @param cell where its last level is kept
   */
  static Level edge(Level[] memory, int cell, Level now, boolean rising) {
    Level before = memory[cell];
    memory[cell] = now.defined() ? now : Level.UNDEFINED;
    if (before == Level.OPEN) {
      return Level.LOW;
    }
    if (!before.defined() || !now.defined()) {
      return Level.UNDEFINED;
    }
    return Level.of(before != now && now == Level.of(rising));
  }
}
