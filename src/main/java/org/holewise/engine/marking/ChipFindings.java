package org.holewise.engine.marking;

import java.util.List;
import java.util.stream.Stream;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Finding;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.wiring.Repair;
import org.holewise.engine.wiring.WiringReport;

/**
 * Chips that sit wrongly as a whole: {@code chip-turned} (ref, hole of pin 1) and {@code
 * chip-shifted} (ref, hole of pin 1, columns). One that is not across the groove is found without
 * its circuit.
 */
final class ChipFindings {
  private ChipFindings() {}

  static List<Finding> of(WiringReport wiring, BenchRecord record) {
    return wiring.differences().stream()
        .map(difference -> difference.repair())
        .filter(repair -> repair instanceof Repair.PlacePart)
        .map(repair -> (Repair.PlacePart) repair)
        .flatMap(place -> place.anew().stream().flatMap(anew -> of(place.ref(), anew, record)))
        .toList();
  }

  private static Stream<Finding> of(String ref, Repair.Reseat anew, BenchRecord record) {
    String at = at(record, ref);
    if (anew.turned()) {
      return Stream.of(Finding.of(at, "chip-turned", ref, anew.to()));
    }
    return anew.columns() == 0
        ? Stream.empty()
        : Stream.of(Finding.of(at, "chip-shifted", ref, anew.to(), Math.abs(anew.columns())));
  }

  /** Where a part was placed. */
  static String at(BenchRecord record, String ref) {
    var placed = record.build().map(Build::placed).orElse(List.of());
    for (int i = 0; i < placed.size(); i++) {
      if (placed.get(i).ref().equals(ref)) {
        return "/build/placed/" + i;
      }
    }
    return "/build/placed";
  }
}
