package org.holewise.engine.part;

import java.util.List;

/**
 * 74164: eight bits that shift as the clock rises, A·B first, cleared while CLR is low. 74595: the
 * same with a second row of eight that takes them over as RCLK rises and drives its outputs while
 * OE is low. Pins from SN74HC164 and SN74HC595 (Texas Instruments, SCLS115 and SCLS041).
 */
final class ShiftRegisters {
  private static final int BITS = 8;

  static final List<Kind> ALL =
      List.of(
          MemoryChip.of(
              "74164",
              "A B QA QB QC QD GND CLK CLR QE QF QG QH VCC",
              "A B CLK CLR",
              "QA QB QC QD QE QF QG QH",
              Family.HC,
              16e-3,
              MemoryChip.cleared(BITS),
              1,
              ShiftRegisters::plain),
          MemoryChip.of(
              "74595",
              "QB QC QD QE QF QG QH GND QHS SRCLR SRCLK RCLK OE SER QA VCC",
              "SER SRCLK SRCLR RCLK OE",
              "QA QB QC QD QE QF QG QH QHS",
              Family.HC,
              33e-3,
              MemoryChip.cleared(2 * BITS),
              2,
              ShiftRegisters::latched));

  private ShiftRegisters() {}

  private static void plain(Level[] in, Level[] memory, Level[] out) {
    shift(memory, in[0].and(in[1]), ChipLogic.edge(memory, BITS, in[2], true), in[3]);
    System.arraycopy(memory, 0, out, 0, BITS);
  }

  private static void latched(Level[] in, Level[] memory, Level[] out) {
    Level shifts = ChipLogic.edge(memory, 2 * BITS, in[1], true);
    Level takes = ChipLogic.edge(memory, 2 * BITS + 1, in[3], true);
    for (int bit = 0; bit < BITS; bit++) {
      Level kept = memory[BITS + bit];
      memory[BITS + bit] = memory[bit].when(takes, kept);
      out[bit] =
          in[4] == Level.HIGH
              ? Level.OPEN
              : in[4] == Level.LOW ? memory[BITS + bit] : Level.UNDEFINED;
    }
    shift(memory, in[0], shifts, in[2]);
    out[BITS] = memory[BITS - 1];
  }

  private static void shift(Level[] memory, Level first, Level edge, Level keep) {
    Level before = first;
    for (int bit = 0; bit < BITS; bit++) {
      Level was = memory[bit];
      memory[bit] = before.when(edge, was).and(keep);
      before = was;
    }
  }
}
