package org.holewise.school.room;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A kind of fault that latest hand-ins point to first.
 *
 * @param kind as marks name it
 * @param benches numbers of the benches, ascending, at least one
 */
record Stumble(String kind, List<Integer> benches) {

  /** What the class trips over, the commonest first. */
  static List<Stumble> of(List<BenchProgress> room) {
    var kinds = new LinkedHashMap<String, List<Integer>>();
    for (BenchProgress bench : room) {
      bench
          .last()
          .flatMap(Attempt::fault)
          .ifPresent(
              fault ->
                  kinds
                      .computeIfAbsent(fault.kind(), kind -> new ArrayList<>())
                      .add(bench.bench().number()));
    }
    return kinds.entrySet().stream()
        .map(kind -> new Stumble(kind.getKey(), kind.getValue().stream().sorted().toList()))
        .sorted(
            Comparator.comparing((Stumble stumble) -> -stumble.count())
                .thenComparing(Stumble::kind))
        .toList();
  }

  public int count() {
    return benches.size();
  }

  public String numbers() {
    return benches.stream().map(String::valueOf).collect(Collectors.joining(", "));
  }
}
