package org.holewise.engine.reading;

import org.holewise.engine.quantity.Unit;

/** What an instrument or an eye shows. */
public sealed interface Shown {
  /** A value in SI units. */
  record Amount(double value, Unit unit) implements Shown {}

  /** {@code lit}, {@code dim}, {@code dark}, {@code yes}, {@code no}. */
  record Word(String word) implements Shown {}

  /** Beyond the largest range. */
  record OverRange() implements Shown {}
}
