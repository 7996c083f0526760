package org.holewise.school.room;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.holewise.school.account.Person;
import org.holewise.school.handin.Fault;
import org.holewise.school.room.BenchProgress.Filled;
import org.holewise.school.sheet.Said;

/**
 * A bench as the room shows it.
 *
 * @param members their names, joined; may be empty
 * @param kind of the first reason, in small letters, as the style sheet names it
 * @param needs whether the teacher is needed here
 * @param whys why it stands where it stands, the strongest reason first
 * @param marks how its last hand-in was marked; empty before the first
 */
record Tile(
    long bench,
    int number,
    String members,
    String kind,
    boolean needs,
    List<Why> whys,
    Filled filled,
    Optional<Said> marks) {

  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;

  /** A reason in words: its shape, for how long, and the fault that it is about. */
  record Why(String shape, Said said, Optional<Said> lasts, Optional<Fault> fault) {}

  /** {@code now}: the minute that the page is of. */
  static Tile of(BenchProgress bench, Need need, Instant now) {
    return new Tile(
        bench.bench().id(),
        bench.bench().number(),
        bench.bench().members().stream().map(Person::name).collect(Collectors.joining(", ")),
        need.first().kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
        need.first().kind().needsTheTeacher(),
        need.reasons().stream().map(reason -> why(bench, reason, now)).toList(),
        bench.filled(),
        bench.last().map(last -> marks(bench.attempts().size(), last)));
  }

  static String shape(Need.Kind kind) {
    return switch (kind) {
      case HELP, SAME_FAULT, STUCK -> "look";
      case STOPPED, CAUTION -> "stop";
      case LOOK_FIRST, HELD -> "waits";
      case FINISHED -> "fits";
      case AT_WORK -> "works";
      case EMPTY -> "free";
    };
  }

  private static Why why(BenchProgress bench, Need.Reason reason, Instant now) {
    boolean same = reason.kind() == Need.Kind.SAME_FAULT;
    return new Why(
        shape(reason.kind()),
        Said.of("room.why." + reason.kind(), bench.repeats()),
        reason.since().map(since -> lasts(Duration.between(since, now))),
        bench.last().flatMap(Attempt::fault).filter(fault -> same));
  }

  /** How long something lasts, to the minute. */
  static Said lasts(Duration time) {
    long minutes = Math.max(0, time.toMinutes());
    if (minutes == 0) {
      return Said.of("room.lasts.now");
    }
    if (minutes < HOUR) {
      return Said.of("room.lasts.minutes", minutes);
    }
    return minutes < DAY
        ? Said.of("room.lasts.hours", minutes / HOUR, minutes % HOUR)
        : Said.of("room.lasts.days", minutes / DAY);
  }

  private static Said marks(int attempts, Attempt last) {
    return last.result()
        .map(result -> Said.of("room.marks", attempts, result.total(), result.points().of()))
        .orElseGet(() -> Said.of("room.marks.waits", attempts));
  }
}
