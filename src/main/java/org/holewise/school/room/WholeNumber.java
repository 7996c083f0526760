package org.holewise.school.room;

import java.util.Optional;

/** A whole number as people type it. */
final class WholeNumber {

  private static final String DIGITS = "\\d{1,9}";

  private WholeNumber() {}

  /** Empty where it is none, or is outside of the limits. */
  static Optional<Integer> read(String typed, int least, int most) {
    return Optional.of(typed.strip())
        .filter(text -> text.matches(DIGITS))
        .map(Integer::parseInt)
        .filter(number -> number >= least && number <= most);
  }
}
