package org.holewise.engine.part;

import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * A chip that is its pins and a function of one step; with memory, or without.
 *
 * @param cells what it remembers, as it is when cleared
 * @param clocks how many clocks it watches for edges
 * @param halves pins of its two equal halves in the same order; both empty where it has none
 */
record MemoryChip(
    String name,
    Pinout pinout,
    String inputs,
    String outputs,
    Family usual,
    double idle,
    List<Level> cells,
    int clocks,
    ChipLogic.Steps steps,
    List<String> halves)
    implements Chip {

  static MemoryChip of(
      String name,
      String pins,
      String inputs,
      String outputs,
      Family usual,
      double idle,
      List<Level> cells,
      int clocks,
      ChipLogic.Steps steps) {
    return new MemoryChip(
        name, Pinout.of(pins), inputs, outputs, usual, idle, cells, clocks, steps, List.of());
  }

  MemoryChip halves(String one, String other) {
    return new MemoryChip(
        name, pinout, inputs, outputs, usual, idle, cells, clocks, steps, List.of(one, other));
  }

  static List<Level> cleared(int cells) {
    return Collections.nCopies(cells, Level.LOW);
  }

  @Override
  public ChipLogic logic(Family family) {
    return new ChipLogic(family, false, count(inputs), count(outputs), cells, clocks, steps);
  }

  private static int count(String names) {
    return names.split(" ").length;
  }

  @Override
  public List<Map<String, String>> exchanges(Fields fields) {
    if (halves.isEmpty()) {
      return List.of();
    }
    List<String> one = pinout.numbers(halves.get(0));
    List<String> other = pinout.numbers(halves.get(1));
    return maps(List.of(pinout.exchanged(one, other)));
  }
}
