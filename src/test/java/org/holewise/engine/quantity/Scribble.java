package org.holewise.engine.quantity;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Seeded texts that are nearly quantities: their pieces in any order, some with any character. */
final class Scribble {

  private static final String[] PIECES = {
    "0", "1", "47", "000", "999999", ".", ",", "-", "+", "\u2212", "e", "E3", "e-9", " ", "\u00a0",
    "p", "n", "u", "\u00b5", "m", "k", "K", "M", "G", "V", "A", "ohm", "Ω", "\u2126", "R", "F", "H",
    "Hz", "s", "W", "%", "dB", "°C", "DC", "milli", "kilo", "OL", "0L", "NaN", "0x1p3", "J",
    "\u0664"
  };

  private final Random random;

  Scribble(long seed) {
    random = new Random(seed);
  }

  List<String> texts(int count) {
    return Stream.generate(this::next).limit(count).toList();
  }

  private String next() {
    StringBuilder text = new StringBuilder();
    int pieces = random.nextInt(1, 6);
    for (int i = 0; i < pieces; i++) {
      boolean any = random.nextInt(20) == 0;
      text.append(any ? anyCharacter() : PIECES[random.nextInt(PIECES.length)]);
    }
    return text.toString();
  }

  private String anyCharacter() {
    return Character.toString((char) random.nextInt(Character.MAX_VALUE + 1));
  }
}
