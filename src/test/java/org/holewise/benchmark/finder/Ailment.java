package org.holewise.benchmark.finder;

import java.util.Random;
import java.util.function.Function;

/**
 * Something wrong with a build, or with one of its readings.
 *
 * @param places where it may be said to be, as {@link Places} writes it
 * @param prior probability before anything is read
 * @param slip what becomes of a reading
 */
record Ailment(
    String kind,
    java.util.List<String> places,
    double prior,
    Function<Random, Truth> truth,
    Slip slip) {

  /** A reading's own slip; none where the reading is empty. */
  record Slip(String reading, How how) {
    static final Slip NONE = new Slip("", How.NONE);
  }

  enum How {
    NONE,
    /** The leads exchanged. */
    NEGATED,
    /** Anything that the range can show. */
    ANYTHING,
    /** The fuse blown: nothing. */
    NOTHING
  }

  Ailment weighed(double factor) {
    return new Ailment(kind, places, prior * factor, truth, slip);
  }
}
