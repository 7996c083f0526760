package org.holewise.engine.part;

/** The logic of a 555: inputs trigger, threshold, reset, control; outputs out and discharge. */
record TimerLogic(boolean cmos) implements Logic {
  private static final double DEAD = 1;
  private static final double MOST = 18;

  /** Between these a reset is neither (V): 0.3 to 1 V in the sheet. */
  private static final double RESET_LOW = 0.4;

  private static final double RESET_HIGH = 1.0;

  @Override
  public int inputs() {
    return 4;
  }

  @Override
  public int outputs() {
    return 2;
  }

  @Override
  public Level[] start() {
    return new Level[] {Level.LOW};
  }

  @Override
  public boolean works(double supply) {
    return supply >= (cmos ? 1.8 : 4) && supply <= MOST;
  }

  @Override
  public boolean dead(double supply) {
    return supply < DEAD;
  }

  @Override
  public boolean waits(int input) {
    return input < 2;
  }

  @Override
  public Level read(int input, double[] volts, double supply, Level before) {
    double control = volts[3];
    return switch (input) {
      case 0 -> Level.of(volts[0] >= control / 2);
      case 1 -> Level.of(volts[1] > control);
      case 2 ->
          volts[2] <= RESET_LOW ? Level.LOW : volts[2] >= RESET_HIGH ? Level.HIGH : Level.UNDEFINED;
      default -> Level.HIGH;
    };
  }

  @Override
  public double low(double supply) {
    return cmos ? 0.3 * supply : 0.8;
  }

  @Override
  public double high(double supply) {
    return cmos ? 0.7 * supply : 2.0;
  }

  @Override
  public Level open(int input) {
    return input == 2 && !cmos ? Level.HIGH : Level.UNDEFINED;
  }

  @Override
  public void step(Level[] in, Level[] memory, Level[] out) {
    Level kept = Level.LOW.when(in[1], memory[0]);
    Level set = Level.HIGH.when(in[0].not(), kept);
    memory[0] = set.and(in[2]);
    out[0] = memory[0];
    out[1] =
        memory[0] == Level.HIGH ? Level.OPEN : memory[0] == Level.LOW ? Level.LOW : Level.UNDEFINED;
  }
}
