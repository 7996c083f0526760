package org.holewise.engine.part;

/**
 * 74393: two four-bit counters. Each stage toggles as the one before it falls, the first as the
 * clock falls, so that the stages settle one after another: from 0111 through 0110, 0100 and 0000
 * to 1000 (Kuphaldt, Lessons in Electric Circuits, Digital 11). Clear acts while high. Pins from
 * SN74HC393 (Texas Instruments, SCLS143).
 */
final class RippleCounter {
  private static final int BITS = 4;

  static final Kind KIND =
      MemoryChip.of(
              "74393",
              "1CLK 1CLR 1QA 1QB 1QC 1QD GND 2QD 2QC 2QB 2QA 2CLR 2CLK VCC",
              "1CLK 1CLR 2CLK 2CLR",
              "1QA 1QB 1QC 1QD 2QA 2QB 2QC 2QD",
              Family.HC,
              15e-3,
              MemoryChip.cleared(2 * BITS),
              2 * BITS,
              RippleCounter::step)
          .halves("1CLK 1CLR 1QA 1QB 1QC 1QD", "2CLK 2CLR 2QA 2QB 2QC 2QD");

  private RippleCounter() {}

  private static void step(Level[] in, Level[] memory, Level[] out) {
    for (int k = 0; k < 2; k++) {
      Level clock = in[2 * k];
      Level keep = in[2 * k + 1].not();
      for (int bit = 0; bit < BITS; bit++) {
        int cell = BITS * k + bit;
        Level was = memory[cell];
        Level edge = ChipLogic.edge(memory, 2 * BITS + cell, clock, false);
        memory[cell] = was.not().when(edge, was).and(keep);
        out[cell] = memory[cell];
        clock = was;
      }
    }
  }
}
