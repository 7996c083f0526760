package org.holewise.engine.part;

/**
 * A logic level, or what drives a wire. What cannot be told is {@link #UNDEFINED} and stays so
 * through a gate unless another input settles the matter (Kleene's strong logic of three values;
 * Eichelberger 1965, IBM Journal of Research and Development 9).
 */
public enum Level {
  LOW,
  HIGH,
  UNDEFINED,
  /** As an output: driving nothing. As an input: driven by nothing. */
  OPEN;

  public static Level of(boolean high) {
    return high ? HIGH : LOW;
  }

  public boolean defined() {
    return this == LOW || this == HIGH;
  }

  Level not() {
    return this == LOW ? HIGH : this == HIGH ? LOW : UNDEFINED;
  }

  Level and(Level other) {
    if (this == LOW || other == LOW) {
      return LOW;
    }
    return this == HIGH && other == HIGH ? HIGH : UNDEFINED;
  }

  Level or(Level other) {
    return not().and(other.not()).not();
  }

  Level xor(Level other) {
    return defined() && other.defined() ? of(this != other) : UNDEFINED;
  }

  /** This where a choice is high, the other where it is low, either where they agree. */
  Level when(Level choice, Level otherwise) {
    if (choice.defined()) {
      return choice == HIGH ? this : otherwise;
    }
    return this == otherwise ? this : UNDEFINED;
  }
}
