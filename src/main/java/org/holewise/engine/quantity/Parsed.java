package org.holewise.engine.quantity;

/** What became of a text: a number in the wanted unit, or the reason why not. Immutable. */
public sealed interface Parsed permits Parsed.Value, Parsed.Unreadable {

  /**
   * A text that was read.
   *
   * @param si the number in the wanted unit, without prefix; finite, and never negative zero
   */
  record Value(double si) implements Parsed {}

  /** A text that was not read. */
  record Unreadable(Why why) implements Parsed {}

  /** Why a text is not taken as a quantity; the page says it in words and asks. */
  enum Why {
    /** Nothing but spaces. */
    EMPTY,
    /** No decimal number at its head, figures in the wrong place, or a text of absurd length. */
    NOT_A_NUMBER,
    /** Not one of the words that this reading can be. */
    NOT_A_WORD,
    /** The unit is unknown or of another dimension than the one wanted. */
    WRONG_UNIT,
    /** Two separators, or one that may part thousands as well as decimals. */
    AMBIGUOUS_SEPARATOR,
    /** A reading without unit whose magnitude does not settle it. */
    UNIT_NEEDED,
    /** An {@code m} or {@code M} that may be milli as well as mega. */
    CASE_UNCLEAR,
    /** Magnitude above 1e18, or below 1e-30 and not zero. */
    OUT_OF_RANGE
  }
}
