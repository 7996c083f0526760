package org.holewise.school.cause;

import java.util.Optional;

/**
 * The cause of a hand-in that counts, and what the hand-in's mark had said when it became known.
 *
 * @param proven whether a repair proved it; else a teacher said so
 * @param pointed at which position the mark had its place, from 1; 0 where it had not; empty where
 *     the cause names no place or there was no mark
 * @param said the probability of the mark's first suspect
 * @param wasSo whether that was the place
 */
record KnownCause(
    String kind,
    boolean proven,
    Optional<Integer> pointed,
    Optional<Double> said,
    Optional<Boolean> wasSo) {

  boolean isJudged() {
    return pointed.isPresent();
  }

  boolean amongFirst(int most) {
    return pointed.filter(position -> position >= 1 && position <= most).isPresent();
  }
}
