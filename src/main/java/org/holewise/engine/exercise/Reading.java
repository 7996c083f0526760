package org.holewise.engine.exercise;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A reading that an exercise asks for.
 *
 * @param band the teacher's own limits, where given
 */
public record Reading(
    String id,
    String label,
    Measure measure,
    Occasion occasion,
    double weight,
    Optional<Limits> band) {

  /** Lowest and highest value that is accepted (SI). */
  public record Limits(double low, double high) {}

  public Reading(
      String id, String label, Measure measure, String when, double weight, Optional<Limits> band) {
    this(id, label, measure, Occasion.in(when), weight, band);
  }

  /** Name of the condition. */
  public String when() {
    return occasion.when();
  }

  /** How many pulses of the condition's clock come before it. */
  public int after() {
    return occasion.after();
  }

  /** Frequency that the generator is set to for it (Hz). */
  public OptionalDouble hertz() {
    return occasion.hertz();
  }
}
