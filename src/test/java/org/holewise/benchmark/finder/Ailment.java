package org.holewise.benchmark.finder;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Something wrong with a build, or with one of its readings.
 *
 * @param places where it may be said to be, as {@link Places} writes it
 * @param prior probability before anything is read
 * @param slip what becomes of a reading
 */
record Ailment(String kind, List<String> places, double prior, Change change, Slip slip) {

  /** What somebody does to a build. */
  interface Change {
    Tampered apply(Tampered tampered, Random random);
  }

  Truth truth(Setup setup, Random random) {
    return change.apply(new Tampered(setup.exercise(), setup.build()), random).truth();
  }

  /** This and then another, the two places together. */
  Ailment and(Ailment other) {
    return new Ailment(
        kind + " and " + other.kind,
        Stream.concat(places.stream(), other.places.stream()).toList(),
        prior * other.prior,
        (tampered, random) -> other.change.apply(change.apply(tampered, random), random),
        slip);
  }

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
    return new Ailment(kind, places, prior * factor, change, slip);
  }
}
