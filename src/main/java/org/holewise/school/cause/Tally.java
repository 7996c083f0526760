package org.holewise.school.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * How often marks had the true cause's place.
 *
 * @param kind of fault; empty for all together
 * @param known causes
 * @param judged those of them that name a place
 * @param first where the mark named it first
 * @param three where it was among the first three
 */
record Tally(String kind, int known, int judged, int first, int three) {

  private static final int FEW = 3;

  static Tally of(String kind, List<KnownCause> causes) {
    return new Tally(
        kind,
        causes.size(),
        (int) causes.stream().filter(KnownCause::isJudged).count(),
        (int) causes.stream().filter(cause -> cause.amongFirst(1)).count(),
        (int) causes.stream().filter(cause -> cause.amongFirst(FEW)).count());
  }

  /** One of each kind, the commonest first. */
  static List<Tally> byKind(List<KnownCause> causes) {
    var kinds = new TreeMap<String, List<KnownCause>>();
    for (KnownCause cause : causes) {
      kinds.computeIfAbsent(cause.kind(), kind -> new ArrayList<>()).add(cause);
    }
    return kinds.entrySet().stream()
        .map(kind -> of(kind.getKey(), kind.getValue()))
        .sorted(Comparator.comparing(tally -> -tally.known()))
        .toList();
  }
}
