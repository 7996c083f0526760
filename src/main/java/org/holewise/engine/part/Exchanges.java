package org.holewise.engine.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All ways in which the gates of a chip may stand in for one another. */
final class Exchanges {
  private final GateChip chip;
  private final List<Map<String, String>> all = new ArrayList<>();

  private Exchanges(GateChip chip) {
    this.chip = chip;
  }

  static List<Map<String, String>> of(GateChip chip) {
    return new Exchanges(chip).list();
  }

  private List<Map<String, String>> list() {
    var identity = new LinkedHashMap<String, String>();
    chip.pinout().numbers().forEach(pin -> identity.put(pin, pin));
    add(0, new ArrayList<>(), identity);
    all.remove(identity);
    return List.copyOf(all);
  }

  private void add(int gate, List<Integer> taken, Map<String, String> soFar) {
    if (gate == chip.gates()) {
      all.add(soFar);
      return;
    }
    List<String> own = chip.legs(gate, false);
    for (int other = 0; other < chip.gates(); other++) {
      for (boolean turned :
          chip.legs() == 1 ? new boolean[] {false} : new boolean[] {false, true}) {
        if (!taken.contains(other)) {
          taken.add(other);
          add(gate + 1, taken, with(soFar, own, chip.legs(other, turned)));
          taken.remove(Integer.valueOf(other));
        }
      }
    }
  }

  private static Map<String, String> with(
      Map<String, String> soFar, List<String> from, List<String> to) {
    var with = new LinkedHashMap<>(soFar);
    for (int i = 0; i < from.size(); i++) {
      with.put(from.get(i), to.get(i));
    }
    return with;
  }
}
