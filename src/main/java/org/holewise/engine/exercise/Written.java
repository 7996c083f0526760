package org.holewise.engine.exercise;

import java.util.OptionalDouble;

/**
 * A reading as it was written down: text, or a plain number in SI units where a program sent one.
 */
public record Written(String text, OptionalDouble si) {
  public static Written text(String text) {
    return new Written(text, OptionalDouble.empty());
  }

  public static Written number(double si) {
    return new Written(Double.toString(si), OptionalDouble.of(si));
  }
}
