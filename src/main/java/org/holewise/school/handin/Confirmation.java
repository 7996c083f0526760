package org.holewise.school.handin;

import java.time.Instant;
import java.util.Optional;
import org.holewise.school.account.Person;

/**
 * What was the cause of what a hand-in shows.
 *
 * @param kind a kind of suspect, such as {@code open-contact}, or of difference
 * @param place where, such as {@code R1.2}; may be empty
 * @param by the teacher who said so; empty where a repair proved it
 */
public record Confirmation(
    String kind, String place, String note, Optional<Person> by, Instant at) {

  /** Whether a teacher said just that. */
  boolean says(Cause cause) {
    return by.isPresent()
        && kind.equals(cause.kind())
        && place.equals(cause.place())
        && note.equals(cause.note());
  }
}
