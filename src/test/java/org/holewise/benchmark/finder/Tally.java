package org.holewise.benchmark.finder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Counts of how often somebody's list of places was right. */
final class Tally {
  private static final int BINS = 10;

  private final Map<String, int[]> byKind = new LinkedHashMap<>();
  private final List<double[]> listed = new ArrayList<>();
  private int builds;
  private int first;
  private int firstThree;
  private int sound;
  private int accused;
  private long group;

  /**
   * @param places likeliest first; a place is right where it names one of the true ones
   */
  void count(Ailment ailment, Map<List<String>, Double> places) {
    builds++;
    int at = 0;
    int found = Integer.MAX_VALUE;
    double most = places.values().iterator().next();
    for (var place : places.entrySet()) {
      boolean right = place.getKey().stream().anyMatch(ailment.places()::contains);
      found = right ? Math.min(found, at) : found;
      listed.add(new double[] {place.getValue(), right ? 1 : 0});
      group += place.getValue() * 3 >= most ? 1 : 0;
      at++;
    }
    first += found == 0 ? 1 : 0;
    firstThree += found < 3 ? 1 : 0;
    if (ailment.kind().equals("none")) {
      sound++;
      accused += found == 0 ? 0 : 1;
    }
    int[] kind = byKind.computeIfAbsent(ailment.kind(), k -> new int[3]);
    kind[0]++;
    kind[1] += found == 0 ? 1 : 0;
    kind[2] += found < 3 ? 1 : 0;
  }

  double first() {
    return first / (double) builds;
  }

  double firstThree() {
    return firstThree / (double) builds;
  }

  String line() {
    return String.format(
        Locale.ROOT,
        "first %.3f  first three %.3f  sound accused %.3f (%d)  group %.2f  calibration %.3f",
        first(),
        firstThree(),
        accused / Math.max(1.0, sound),
        sound,
        group / (double) builds,
        calibration());
  }

  List<String> kinds() {
    return byKind.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(
            e ->
                String.format(
                    Locale.ROOT,
                    "  %-16s %5d  first %.3f  first three %.3f",
                    e.getKey(),
                    e.getValue()[0],
                    e.getValue()[1] / (double) e.getValue()[0],
                    e.getValue()[2] / (double) e.getValue()[0]))
        .toList();
  }

  /** Mean distance of what was said from how often it was so, in bins of equal count. */
  private double calibration() {
    listed.sort(Comparator.comparingDouble(pair -> pair[0]));
    double sum = 0;
    for (int bin = 0; bin < BINS; bin++) {
      List<double[]> inside =
          listed.subList(listed.size() * bin / BINS, listed.size() * (bin + 1) / BINS);
      double said = inside.stream().mapToDouble(pair -> pair[0]).average().orElse(0);
      double was = inside.stream().mapToDouble(pair -> pair[1]).average().orElse(0);
      sum += Math.abs(said - was) * inside.size() / listed.size();
    }
    return sum;
  }
}
