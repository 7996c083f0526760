package org.holewise.engine.exercise;

import java.util.Optional;

/**
 * A reading that an exercise asks for.
 *
 * @param when name of the condition
 * @param band the teacher's own limits, where given
 */
public record Reading(
    String id, String label, Measure measure, String when, double weight, Optional<Limits> band) {

  /** Lowest and highest value that is accepted (SI). */
  public record Limits(double low, double high) {}
}
