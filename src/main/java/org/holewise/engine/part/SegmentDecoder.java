package org.holewise.engine.part;

/**
 * 4511: four bits to seven segments, high for lit. Latched while LE is high, dark while BL is low
 * or the number is above nine, all lit while LT is low. Pins and digits from CD4511B (Texas
 * Instruments, SCHS072): 6 without its upper bar, 9 without its lower.
 */
final class SegmentDecoder {
  private static final int BITS = 4;

  /** Segments a to g of the digits, a first. */
  private static final String[] DIGITS = {
    "1111110", "0110000", "1101101", "1111001", "0110011", "1011011", "0011111", "1110000",
    "1111111", "1110011"
  };

  static final Kind KIND =
      MemoryChip.of(
          "4511",
          "B C LT BL LE D A VSS e d c b a g f VDD",
          "A B C D LT BL LE",
          "a b c d e f g",
          Family.CMOS,
          1e-3,
          MemoryChip.cleared(BITS),
          0,
          SegmentDecoder::step);

  private SegmentDecoder() {}

  private static void step(Level[] in, Level[] memory, Level[] out) {
    for (int bit = 0; bit < BITS; bit++) {
      memory[bit] = memory[bit].when(in[6], in[bit]);
    }
    for (int segment = 0; segment < out.length; segment++) {
      Level lit = segment(memory, segment, 0, 0).and(in[5]);
      out[segment] = lit.or(in[4].not());
    }
  }

  /** A segment for the number that bits make; every number that it may be where some are unsure. */
  private static Level segment(Level[] bits, int segment, int bit, int number) {
    if (bit == BITS) {
      return Level.of(number < DIGITS.length && DIGITS[number].charAt(segment) == '1');
    }
    Level without = segment(bits, segment, bit + 1, number);
    Level with = segment(bits, segment, bit + 1, number + (1 << bit));
    return with.when(bits[bit], without);
  }
}
