package org.holewise.school.room;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.holewise.school.handin.Power;

/**
 * How much a bench needs the teacher, and why: the strongest reason first. Whoever has waited
 * longer for the same reason comes first. A teacher's look answers what can be answered by looking,
 * until the bench has gone on. Immutable.
 *
 * @param reasons at least one
 */
record Need(List<Reason> reasons) implements Comparable<Need> {

  /** No change for so long, and not finished: stuck. */
  static final Duration STUCK = Duration.ofMinutes(10);

  /** So many hand-ins with one fault are no progress. */
  static final int SAME = 3;

  /** Why a bench is where it is in the order of the room, the strongest first. */
  enum Kind {
    HELP,
    LOOK_FIRST,
    STOPPED,
    SAME_FAULT,
    STUCK,
    CAUTION,
    HELD,
    AT_WORK,
    FINISHED,
    EMPTY;

    boolean needsTheTeacher() {
      return compareTo(AT_WORK) < 0;
    }
  }

  /** {@code since}: when it began, where that is known. */
  record Reason(Kind kind, Optional<Instant> since) {}

  Reason first() {
    return reasons.get(0);
  }

  List<Reason> others() {
    return reasons.subList(1, reasons.size());
  }

  /**
   * What a bench needs now.
   *
   * @param open whether the session is open; of a closed one only marks are left to settle
   */
  static Need of(BenchProgress bench, boolean open, Instant now) {
    var reasons = new ArrayList<Reason>();
    if (open) {
      working(bench, now, reasons);
    }
    bench
        .last()
        .filter(attempt -> attempt.result().filter(Result::held).isPresent())
        .ifPresent(attempt -> reasons.add(new Reason(Kind.HELD, Optional.of(attempt.at()))));
    if (reasons.isEmpty()) {
      reasons.add(without(bench));
    }
    return new Need(List.copyOf(reasons));
  }

  @Override
  public int compareTo(Need other) {
    return Comparator.comparing((Need need) -> need.first().kind())
        .thenComparing(need -> need.first().since().orElse(Instant.MAX))
        .compare(this, other);
  }

  private static void working(BenchProgress bench, Instant now, List<Reason> reasons) {
    var times = bench.times();
    times.calls().ifPresent(since -> reasons.add(new Reason(Kind.HELP, Optional.of(since))));
    boolean finished = bench.isFinished();
    if (!finished && bench.power() == Power.WAITS_FOR_TEACHER) {
      reasons.add(new Reason(Kind.LOOK_FIRST, times.asked()));
    }
    if (!finished && bench.power() == Power.STOPPED) {
      reasons.add(new Reason(Kind.STOPPED, times.asked()));
    }
    if (bench.repeats() >= SAME && isNews(bench, bench.last())) {
      int first = bench.attempts().size() - bench.repeats();
      reasons.add(new Reason(Kind.SAME_FAULT, Optional.of(bench.attempts().get(first).at())));
    }
    stuck(bench, now)
        .filter(since -> !finished)
        .ifPresent(since -> reasons.add(new Reason(Kind.STUCK, Optional.of(since))));
    bench
        .last()
        .filter(last -> last.result().filter(r -> !r.caution().isEmpty()).isPresent())
        .filter(last -> isNews(bench, Optional.of(last)))
        .ifPresent(last -> reasons.add(new Reason(Kind.CAUTION, Optional.of(last.at()))));
  }

  // A teacher who was there has seen what was handed in before.
  private static boolean isNews(BenchProgress bench, Optional<Attempt> attempt) {
    var looked = bench.times().looked().orElse(Instant.MIN);
    return attempt.filter(last -> last.at().isAfter(looked)).isPresent();
  }

  private static Optional<Instant> stuck(BenchProgress bench, Instant now) {
    if (bench.isEmpty()) {
      return Optional.empty();
    }
    return bench
        .times()
        .worked()
        .map(worked -> later(worked, bench.times().looked().orElse(worked)))
        .filter(since -> Duration.between(since, now).compareTo(STUCK) >= 0);
  }

  private static Reason without(BenchProgress bench) {
    if (bench.isFinished()) {
      return new Reason(Kind.FINISHED, bench.last().map(Attempt::at));
    }
    return bench.isEmpty()
        ? new Reason(Kind.EMPTY, Optional.empty())
        : new Reason(Kind.AT_WORK, bench.times().worked());
  }

  private static Instant later(Instant one, Instant other) {
    return one.isAfter(other) ? one : other;
  }
}
