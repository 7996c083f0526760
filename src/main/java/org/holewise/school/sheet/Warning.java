package org.holewise.school.sheet;

import java.util.List;
import org.holewise.engine.marking.Caution;
import org.holewise.school.sheet.KeptMark.Told;

/** What can hurt a part or a person, in a sentence; {@code stop}: power off at once. */
public record Warning(String text, boolean stop) {
  /** These spoil something or can hurt: power off first, everything else later. */
  private static final List<String> STOPS =
      List.of(
          "far-over-limit",
          "wrong-polarity",
          "chip-supply-high",
          "chip-supply-reversed",
          "supply-shorted",
          "unsolvable",
          "high-voltage");

  static List<Warning> of(List<Told<Caution>> cautions) {
    return cautions.stream()
        .map(told -> new Warning(told.text(), STOPS.contains(told.what().kind())))
        .distinct()
        .toList();
  }
}
