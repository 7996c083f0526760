package org.holewise.school.handin;

import java.time.Instant;
import org.holewise.school.account.Person;

/** A teacher's own marks for a hand-in, and why. */
public record Overruling(int wiring, int readings, String reason, Person by, Instant at) {

  public int total() {
    return wiring + readings;
  }
}
