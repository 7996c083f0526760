package org.holewise.engine.part;

import java.util.ArrayList;
import java.util.List;

/**
 * 4017: one of ten outputs is high; the next one takes over as the clock rises while inhibit is
 * low, or as inhibit falls while the clock is high. Reset acts while high; carry out is high for
 * the first five counts. Pins from CD4017B (Texas Instruments, SCHS027).
 */
final class DecadeCounter {
  private static final int COUNTS = 10;

  static final Kind KIND =
      MemoryChip.of(
          "4017",
          "Q5 Q1 Q0 Q2 Q6 Q7 Q3 VSS Q8 Q4 Q9 CO INH CLK RST VDD",
          "CLK INH RST",
          "Q0 Q1 Q2 Q3 Q4 Q5 Q6 Q7 Q8 Q9 CO",
          Family.CMOS,
          1e-3,
          first(),
          1,
          DecadeCounter::step);

  private DecadeCounter() {}

  private static List<Level> first() {
    var cells = new ArrayList<>(MemoryChip.cleared(COUNTS));
    cells.set(0, Level.HIGH);
    return List.copyOf(cells);
  }

  private static void step(Level[] in, Level[] memory, Level[] out) {
    Level edge = ChipLogic.edge(memory, COUNTS, in[0].and(in[1].not()), true);
    Level reset = in[2];
    Level before = memory[COUNTS - 1];
    Level carry = Level.LOW;
    for (int k = 0; k < COUNTS; k++) {
      Level was = memory[k];
      Level next = before.when(edge, was);
      memory[k] = k == 0 ? next.or(reset) : next.and(reset.not());
      out[k] = memory[k];
      carry = k < COUNTS / 2 ? carry.or(memory[k]) : carry;
      before = was;
    }
    out[COUNTS] = carry;
  }
}
