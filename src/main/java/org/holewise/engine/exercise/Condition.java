package org.holewise.engine.exercise;

import java.util.List;
import java.util.OptionalDouble;

/** A state of switches and surroundings in which readings are taken; temperature in °C. */
public record Condition(String name, List<Setting> set, OptionalDouble temperature) {
  public Condition {
    set = List.copyOf(set);
  }

  /** A field of a part given another value for the time of the condition. */
  public record Setting(String ref, String field, Object value) {}
}
