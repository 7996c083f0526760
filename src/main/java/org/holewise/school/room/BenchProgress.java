package org.holewise.school.room;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.holewise.school.handin.Power;
import org.holewise.school.session.Bench;

/**
 * How far a bench has come. Immutable.
 *
 * @param attempts its hand-ins, the first first
 */
record BenchProgress(Bench bench, Filled filled, Power power, Times times, List<Attempt> attempts) {

  /** How many parts have all their holes and how many readings are taken, and of how many. */
  record Filled(int placed, int parts, int read, int readings) {

    boolean nothing() {
      return placed == 0 && read == 0;
    }
  }

  /**
   * When what was.
   *
   * @param calls since when the bench asks for help
   * @param asked when it last asked whether to switch on
   * @param looked when a teacher last looked at it
   * @param worked when a student last joined it, wrote, asked or handed in
   */
  record Times(
      Optional<Instant> calls,
      Optional<Instant> asked,
      Optional<Instant> looked,
      Optional<Instant> worked) {}

  Optional<Attempt> last() {
    return attempts.isEmpty() ? Optional.empty() : Optional.of(attempts.get(attempts.size() - 1));
  }

  Optional<Result> result() {
    return last().flatMap(Attempt::result);
  }

  boolean isEmpty() {
    return bench.members().isEmpty() && filled.nothing() && attempts.isEmpty();
  }

  boolean isFinished() {
    return result().filter(Result::sound).isPresent();
  }

  /** How many of the last hand-ins, one after the other, have the fault of the last one. */
  int repeats() {
    var fault = last().flatMap(Attempt::fault);
    int count = 0;
    while (fault.isPresent()
        && count < attempts.size()
        && attempts.get(attempts.size() - 1 - count).fault().equals(fault)) {
      count++;
    }
    return count;
  }
}
