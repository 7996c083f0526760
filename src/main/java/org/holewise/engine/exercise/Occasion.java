package org.holewise.engine.exercise;

import java.util.OptionalDouble;

/**
 * When a reading is taken.
 *
 * @param when name of the condition
 * @param after how many pulses of the condition's clock come before it
 * @param hertz frequency that the generator is set to; its own where empty
 */
public record Occasion(String when, int after, OptionalDouble hertz) {
  public static Occasion in(String condition) {
    return new Occasion(condition, 0, OptionalDouble.empty());
  }
}
