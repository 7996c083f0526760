package org.holewise.school.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * First suspects of about the same probability.
 *
 * @param count how many, at least one
 * @param said their probability on average
 * @param so how many of them were the true cause's place
 */
record Bin(int count, double said, int so) {

  /** With fewer, chance says more than the fault finder does. */
  static final int FEWEST = 20;

  private static final int MOST_BINS = 6;

  private static final int FEWEST_IN_A_BIN = 5;

  /** Normal deviate of 95 %, both sides. */
  private static final double Z = 1.96;

  /** Of equal count, or one more, the least probable first; none where there are too few. */
  static List<Bin> of(List<KnownCause> causes) {
    List<KnownCause> told =
        causes.stream()
            .filter(cause -> cause.said().isPresent() && cause.wasSo().isPresent())
            .sorted(Comparator.comparing(cause -> cause.said().orElseThrow()))
            .toList();
    var bins = new ArrayList<Bin>();
    int many = told.size() < FEWEST ? 0 : Math.min(MOST_BINS, told.size() / FEWEST_IN_A_BIN);
    for (int i = 0; i < many; i++) {
      bins.add(bin(told.subList(told.size() * i / many, told.size() * (i + 1) / many)));
    }
    return bins;
  }

  private static Bin bin(List<KnownCause> causes) {
    double said =
        causes.stream().mapToDouble(cause -> cause.said().orElseThrow()).average().orElseThrow();
    long so = causes.stream().filter(cause -> cause.wasSo().orElseThrow()).count();
    return new Bin(causes.size(), said, (int) so);
  }

  double share() {
    return (double) so / count;
  }

  /** The smallest rate that so many hits may come from (E. B. Wilson, 1927, score interval). */
  double low() {
    return Math.max(0, middle() - reach());
  }

  /** The largest such rate. */
  double high() {
    return Math.min(1, middle() + reach());
  }

  private double middle() {
    return (share() + Z * Z / (2 * count)) / (1 + Z * Z / count);
  }

  private double reach() {
    double variance = share() * (1 - share()) / count + Z * Z / (4.0 * count * count);
    return Z * Math.sqrt(variance) / (1 + Z * Z / count);
  }
}
