package org.holewise.school.room;

import java.time.Instant;
import java.util.Optional;
import org.holewise.school.handin.Fault;

/**
 * A hand-in of a bench as lists show it. Immutable.
 *
 * @param number counts the bench's hand-ins, from 1
 * @param result empty while it waits to be marked
 */
record Attempt(long id, long bench, int number, Instant at, Optional<Result> result) {

  Optional<Fault> fault() {
    return result.flatMap(Result::fault);
  }
}
