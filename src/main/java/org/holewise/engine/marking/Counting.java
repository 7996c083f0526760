package org.holewise.engine.marking;

import java.util.List;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Scheme;
import org.holewise.engine.reading.Judged;
import org.holewise.engine.wiring.WiringReport;

/** Counts the points; each share is rounded half up. */
final class Counting {

  private Counting() {}

  static Points points(
      Exercise exercise, WiringReport wiring, List<Judged> readings, boolean held) {
    Scheme scheme = exercise.marks();
    double wired = held ? 1 : wiring.score();
    return new Points(
        halfUp(scheme.wiring() * wired),
        halfUp(scheme.readings() * earned(readings)),
        scheme.total(),
        held);
  }

  /** Part of the readings' weight that was earned; all of it where there is none to earn. */
  private static double earned(List<Judged> readings) {
    double all = 0;
    double earned = 0;
    for (Judged judged : readings) {
      all += judged.reading().weight();
      earned += judged.verdict().earns() ? judged.reading().weight() : 0;
    }
    return all > 0 ? earned / all : 1;
  }

  /** A hair below one half is one half: shares are quotients of small numbers. */
  private static int halfUp(double share) {
    return (int) Math.floor(share + 0.5 + 1e-9);
  }
}
