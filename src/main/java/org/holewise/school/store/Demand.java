package org.holewise.school.store;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What sessions together need of the store. Immutable.
 *
 * @param rows one for each item that any of them needs, those the store is short of first
 * @param unlisted how many of each part that is no item of the store yet; boards and meters are
 *     left out
 */
record Demand(List<Row> rows, Map<PartKey, Integer> unlisted) {

  /**
   * @param need for all these sessions
   * @param left what of it is not packed yet
   */
  record Row(Level level, int need, int left) {

    /** How many lack in the store for what is still to be packed. */
    public int lacking() {
      return Math.max(0, left - level.inStore());
    }
  }

  static Demand of(List<Packing> packings, List<Level> levels) {
    var rows =
        levels.stream()
            .map(level -> row(level, packings))
            .filter(row -> row.need() > 0)
            .sorted(Comparator.comparing(row -> row.lacking() == 0))
            .toList();
    return new Demand(rows, unlisted(packings, listed(levels)));
  }

  private static Row row(Level level, List<Packing> packings) {
    var item = level.item();
    return new Row(
        level,
        packings.stream().mapToInt(packing -> packing.need(item)).sum(),
        packings.stream().mapToInt(packing -> packing.left(item)).sum());
  }

  private static Set<PartKey> listed(List<Level> levels) {
    return levels.stream()
        .flatMap(level -> level.item().part().stream())
        .collect(Collectors.toSet());
  }

  private static Map<PartKey, Integer> unlisted(List<Packing> packings, Set<PartKey> listed) {
    Map<PartKey, Integer> needs = new LinkedHashMap<>();
    for (Packing packing : packings) {
      for (Kit.Need need : packing.kit().needs()) {
        if (!listed.contains(need.part()) && !need.part().equipment()) {
          needs.merge(need.part(), need.total(), Integer::sum);
        }
      }
    }
    return Collections.unmodifiableMap(needs);
  }
}
