package org.holewise.engine.part;

import java.util.List;

/**
 * 74161 and 74163: four bits that count together as the clock rises while both enables are high,
 * and take over P0–P3 while LOAD is low; RCO = ENT·Q0·Q1·Q2·Q3. The 161 clears at once, the 163
 * with the clock. Pins from MC74HC161A and MC74HC163A (onsemi).
 */
final class BinaryCounter {
  private static final int BITS = 4;
  private static final String PINS = "CLR CLK P0 P1 P2 P3 ENP GND LOAD ENT Q3 Q2 Q1 Q0 RCO VCC";

  static final List<Kind> ALL =
      List.of(kind("74161", BinaryCounter::clearing), kind("74163", BinaryCounter::synchronous));

  private BinaryCounter() {}

  private static Kind kind(String name, ChipLogic.Steps steps) {
    return MemoryChip.of(
        name,
        PINS,
        "CLR CLK P0 P1 P2 P3 ENP LOAD ENT",
        "Q0 Q1 Q2 Q3 RCO",
        Family.HC,
        18e-3,
        MemoryChip.cleared(BITS),
        1,
        steps);
  }

  private static void clearing(Level[] in, Level[] memory, Level[] out) {
    step(in, memory, out, false);
  }

  private static void synchronous(Level[] in, Level[] memory, Level[] out) {
    step(in, memory, out, true);
  }

  private static void step(Level[] in, Level[] memory, Level[] out, boolean withClock) {
    Level keep = in[0];
    Level edge = ChipLogic.edge(memory, BITS, in[1], true);
    Level load = in[7].not();
    Level carry = in[6].and(in[8]);
    Level full = in[8];
    for (int bit = 0; bit < BITS; bit++) {
      Level was = memory[bit];
      Level next = in[2 + bit].when(load, was.xor(carry));
      Level taken = (withClock ? next.and(keep) : next).when(edge, was);
      memory[bit] = withClock ? taken : taken.and(keep);
      carry = carry.and(was);
      out[bit] = memory[bit];
      full = full.and(memory[bit]);
    }
    out[BITS] = full;
  }
}
