package org.holewise.benchmark.finder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.marking.Mark;

/** What was asked for, how much it was said to tell, and how much it told. */
final class Askings {
  private static final int BINS = 10;

  private final List<Asking> all = new ArrayList<>();
  private final Map<String, Integer> kinds = new TreeMap<>();

  /**
   * One reading asked for.
   *
   * @param turn 0 for the first of a build
   * @param gain foretold (bit)
   * @param before entropy over places before it, {@code after} with its answer (bit)
   */
  private record Asking(int turn, double gain, double before, double after) {
    double fall() {
      return before - after;
    }
  }

  void count(int turn, NextReading asked, Mark before, Mark after) {
    all.add(new Asking(turn, asked.gain(), entropy(before), entropy(after)));
    kinds.merge(asked.measure().key(), 1, Integer::sum);
  }

  /**
   * Entropy over the places that are listed (bit). Where two faults are weighed each place has the
   * probability of both, so that they are taken as shares of their sum.
   */
  private static double entropy(Mark mark) {
    double sum = mark.diagnosis().suspects().stream().mapToDouble(Suspect::probability).sum();
    return mark.diagnosis().suspects().stream()
        .mapToDouble(suspect -> suspect.probability() / sum)
        .filter(p -> p > 0)
        .map(p -> -p * Math.log(p) / Math.log(2))
        .sum();
  }

  List<String> lines() {
    var lines = new ArrayList<String>();
    lines.add(String.format(Locale.ROOT, "  askings %d %s", all.size(), kinds));
    for (int turn = 0; turn < 2; turn++) {
      int number = turn;
      List<Asking> some = all.stream().filter(asking -> asking.turn == number).toList();
      lines.add(
          String.format(
              Locale.ROOT,
              "  asking %d: entropy %.3f before, %.3f after; gain foretold %.3f, fall %.3f (bit,"
                  + " means of %d)",
              turn + 1,
              mean(some, "before"),
              mean(some, "after"),
              mean(some, "gain"),
              mean(some, "fall"),
              some.size()));
    }
    lines.add(
        String.format(
            Locale.ROOT,
            "  gain and fall, a foretold mean against what came: %.3f bit, the mean of |mean gain -"
                + " mean fall| over %d bins of equal count in order of gain",
            byBins(),
            BINS));
    lines.add(
        String.format(
            Locale.ROOT,
            "  gain and fall, each asking by itself: %.3f bit, the mean of |gain - fall|, which"
                + " holds the scatter of single outcomes about their mean",
            all.stream().mapToDouble(one -> Math.abs(one.gain - one.fall())).average().orElse(0)));
    return lines;
  }

  private static double mean(List<Asking> some, String what) {
    return some.stream()
        .mapToDouble(
            one ->
                switch (what) {
                  case "before" -> one.before;
                  case "after" -> one.after;
                  case "gain" -> one.gain;
                  default -> one.fall();
                })
        .average()
        .orElse(0);
  }

  private double byBins() {
    List<Asking> sorted =
        all.stream().sorted(Comparator.comparingDouble((Asking one) -> one.gain)).toList();
    double sum = 0;
    for (int bin = 0; bin < BINS; bin++) {
      List<Asking> inside =
          sorted.subList(sorted.size() * bin / BINS, sorted.size() * (bin + 1) / BINS);
      sum += Math.abs(mean(inside, "gain") - mean(inside, "fall")) / BINS;
    }
    return sum;
  }
}
