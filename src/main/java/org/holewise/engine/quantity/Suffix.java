package org.holewise.engine.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What follows the number: an SI prefix, a unit, both or neither, as symbols or spelled out.
 *
 * @param power the power of ten that it stands for
 * @param unit the unit, where one was written
 * @param spelled whether the prefix was a word, so that its case says nothing
 */
record Suffix(int power, Optional<Unit> unit, boolean spelled) {

  private record Word(String text, int power) {}

  /** Longer words first; "kil" and "meg" are for kilohm and megohm. */
  private static final List<Word> WORDS =
      List.of(
          new Word("pico", -12),
          new Word("nano", -9),
          new Word("micro", -6),
          new Word("milli", -3),
          new Word("kilo", 3),
          new Word("kil", 3),
          new Word("mega", 6),
          new Word("meg", 6),
          new Word("giga", 9));

  /** Empty when the text is neither. Spaces do not count. */
  static Optional<Suffix> read(String text) {
    String compact = text.replace(" ", "");
    if (compact.isEmpty()) {
      return Optional.of(new Suffix(0, Optional.empty(), false));
    }
    return Unit.named(compact)
        .map(Suffix::bare)
        .or(() -> spelled(compact))
        .or(() -> lettered(compact));
  }

  boolean isEmpty() {
    return power == 0 && unit.isEmpty();
  }

  /** Whether a value in that unit may be written so. */
  boolean suits(Unit wanted) {
    return unit.map(written -> written == wanted).orElse(power == 0 || wanted.prefixed());
  }

  private static Suffix bare(Unit unit) {
    return new Suffix(unit == Unit.FRACTION ? -2 : 0, Optional.of(unit), false);
  }

  private static Optional<Suffix> spelled(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    for (Word word : WORDS) {
      if (lower.startsWith(word.text)) {
        Optional<Suffix> found = prefixed(word.power, lower.substring(word.text.length()), true);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Suffix> lettered(String text) {
    int power = power(text.charAt(0));
    return power == 0 ? Optional.empty() : prefixed(power, text.substring(1), false);
  }

  private static Optional<Suffix> prefixed(int power, String name, boolean spelled) {
    if (name.isEmpty()) {
      return Optional.of(new Suffix(power, Optional.empty(), spelled));
    }
    return Unit.named(name)
        .filter(Unit::prefixed)
        .map(unit -> new Suffix(power, Optional.of(unit), spelled));
  }

  /** Zero for what is no prefix. Only m and M differ by case. */
  private static int power(char letter) {
    return switch (letter) {
      case 'p', 'P' -> -12;
      case 'n', 'N' -> -9;
      case 'u', 'U' -> -6;
      case 'm' -> -3;
      case 'k', 'K' -> 3;
      case 'M' -> 6;
      case 'G' -> 9;
      default -> 0;
    };
  }
}
