package org.holewise.school.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.holewise.school.session.LabSession;

/** What a session needs: as many of each part as its exercise has, for every bench. Immutable. */
record Kit(LabSession session, int benches, List<Need> needs) {

  /**
   * @param refs the parts of the exercise that it is, empty for a board or a meter
   * @param each how many a bench needs
   */
  record Need(PartKey part, List<String> refs, int each, int total) {}

  static Kit of(LabSession session, int benches) {
    var exercise = session.exercise();
    var refs = new LinkedHashMap<PartKey, List<String>>();
    for (var part : exercise.parts()) {
      refs.computeIfAbsent(PartKey.of(part), key -> new ArrayList<>()).add(part.ref());
    }
    refs.put(PartKey.board(exercise), List.of());
    refs.put(PartKey.meter(exercise), List.of());
    var needs = new ArrayList<Need>();
    refs.forEach(
        (part, names) -> {
          int each = Math.max(1, names.size());
          needs.add(new Need(part, List.copyOf(names), each, each * benches));
        });
    return new Kit(session, benches, List.copyOf(needs));
  }

  Optional<Need> need(PartKey part) {
    return needs.stream().filter(need -> need.part().equals(part)).findFirst();
  }
}
