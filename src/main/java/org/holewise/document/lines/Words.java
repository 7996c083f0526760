package org.holewise.document.lines;

import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** The words of a line that names holes: a note at its end, commas and joining words left out. */
final class Words {
  private static final Set<String> JOINING = Set.of("to", "and", "-", "->", "→", "–");

  private Words() {}

  static List<String> of(String text) {
    return Arrays.stream(text.replaceFirst("(^|\\s)#.*", "").split("[\\s,;]+"))
        .filter(word -> !word.isEmpty() && !JOINING.contains(word))
        .toList();
  }
}
