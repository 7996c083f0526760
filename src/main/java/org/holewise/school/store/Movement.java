package org.holewise.school.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A row of an item's ledger.
 *
 * @param inStore how many were in the store after it
 * @param counter whether it takes back an earlier one
 * @param countered whether a later one takes it back
 */
record Movement(
    long id,
    Place from,
    Place to,
    int quantity,
    int inStore,
    Optional<ForSession> session,
    boolean counter,
    boolean countered,
    String note,
    String by,
    Instant at) {

  /** What was done, or what was taken back. */
  public Act act() {
    return (counter ? Act.of(to, from) : Act.of(from, to)).orElseThrow();
  }

  /** How it changed what is in the store: more, less, or not at all. */
  public int change() {
    return (to == Place.STORE ? quantity : 0) - (from == Place.STORE ? quantity : 0);
  }

  record ForSession(long id, String group, LocalDate day) {}
}
