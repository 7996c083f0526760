package org.holewise.engine.exercise;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.holewise.engine.part.Pin;

/**
 * A state of switches and surroundings in which readings are taken.
 *
 * @param temperature of the surroundings (°C)
 * @param clock the pin that is clocked by hand
 * @param after how many pulses of the clock have come; 0 unless a reading says otherwise
 * @param hertz what the generator is set to (Hz); its own unless a reading says otherwise
 */
public record Condition(
    String name,
    List<Setting> set,
    OptionalDouble temperature,
    Optional<Pin> clock,
    int after,
    OptionalDouble hertz) {
  public Condition {
    set = List.copyOf(set);
  }

  public Condition(
      String name, List<Setting> set, OptionalDouble temperature, Optional<Pin> clock) {
    this(name, set, temperature, clock, 0, OptionalDouble.empty());
  }

  public Condition(String name, List<Setting> set, OptionalDouble temperature) {
    this(name, set, temperature, Optional.empty());
  }

  /** A field of a part given another value for the time of the condition. */
  public record Setting(String ref, String field, Object value) {}

  /** The same on an occasion: so many pulses later, at that frequency. */
  public Condition on(Occasion occasion) {
    return new Condition(name, set, temperature, clock, occasion.after(), occasion.hertz());
  }
}
