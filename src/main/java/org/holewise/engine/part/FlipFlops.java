package org.holewise.engine.part;

/**
 * 7474: two D flip-flops that take over D as their clock rises, with preset and clear that act
 * while low. Pins from SN74HC74 (Texas Instruments, SCLS094); both outputs are high while preset
 * and clear both are low.
 */
final class FlipFlops {
  private static final int IN = 4;

  static final Kind KIND =
      MemoryChip.of(
              "7474",
              "1CLR 1D 1CLK 1PRE 1Q 1QN GND 2QN 2Q 2PRE 2CLK 2D 2CLR VCC",
              "1CLR 1D 1CLK 1PRE 2CLR 2D 2CLK 2PRE",
              "1Q 1QN 2Q 2QN",
              Family.HC,
              4e-3,
              MemoryChip.cleared(2),
              2,
              FlipFlops::step)
          .halves("1CLR 1D 1CLK 1PRE 1Q 1QN", "2CLR 2D 2CLK 2PRE 2Q 2QN");

  private FlipFlops() {}

  private static void step(Level[] in, Level[] memory, Level[] out) {
    for (int k = 0; k < 2; k++) {
      Level clear = in[IN * k].not();
      Level preset = in[IN * k + 3].not();
      Level edge = ChipLogic.edge(memory, 2 + k, in[IN * k + 2], true);
      Level taken = in[IN * k + 1].when(edge, memory[k]);
      Level q = Level.LOW.when(clear, Level.HIGH.when(preset, taken));
      memory[k] = q;
      out[2 * k] = q.or(preset);
      out[2 * k + 1] = q.not().or(clear);
    }
  }
}
