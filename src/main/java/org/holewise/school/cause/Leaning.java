package org.holewise.school.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.diagnosis.Priors.Family;

/**
 * A family of faults in the table in use, beside the shipped one.
 *
 * @param family {@link Family#NONE} for nothing wrong
 * @param start how many of a hundred faults the shipped table expects of it; for nothing wrong, of
 *     a hundred hand-ins
 * @param now the same by the table in use
 */
record Leaning(Family family, double start, double now) {

  /** A smaller difference is not worth a sentence. */
  private static final double WORTH_SAYING = 2;

  private static final int MOST_SAID = 3;

  /** All families of faults, the commonest now first. */
  static List<Leaning> of(Priors now) {
    Priors start = Priors.start();
    var all = new ArrayList<Leaning>();
    for (Family family : start.shares().keySet()) {
      all.add(new Leaning(family, 100 * start.ofFaults(family), 100 * now.ofFaults(family)));
    }
    all.sort(Comparator.comparing(leaning -> -leaning.now()));
    return all;
  }

  static Leaning ofNothingWrong(Priors now) {
    return new Leaning(Family.NONE, 100 * Priors.start().sound(), 100 * now.sound());
  }

  /** Those that moved most, up or down. */
  static List<Leaning> moved(List<Leaning> all, boolean up) {
    return all.stream()
        .filter(leaning -> leaning.isWorthSaying() && leaning.isUp() == up)
        .sorted(Comparator.comparing(leaning -> -Math.abs(leaning.now() - leaning.start())))
        .limit(MOST_SAID)
        .toList();
  }

  boolean isWorthSaying() {
    return Math.abs(now - start) >= WORTH_SAYING;
  }

  boolean isUp() {
    return now > start;
  }

  public String startText() {
    return text(start);
  }

  public String nowText() {
    return text(now);
  }

  private static String text(double ofHundred) {
    return String.format(Locale.ROOT, "%.0f", ofHundred);
  }
}
