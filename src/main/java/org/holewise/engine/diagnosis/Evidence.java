package org.holewise.engine.diagnosis;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.holewise.engine.reading.Shown;

/**
 * What the readings say of a place, beside all being as it was entered. Immutable.
 *
 * @param signs the readings that speak for it, those that are furthest off first
 */
public record Evidence(Bearing bearing, List<Sign> signs) {
  public Evidence {
    signs = List.copyOf(signs);
  }

  /** Nothing to be said, as where nothing is wrong. */
  public static final Evidence NONE = new Evidence(Bearing.NONE, List.of());

  /** How all readings together bear on a place. */
  public enum Bearing {
    NONE,
    /** Some readings by themselves speak for it: the signs. */
    FOR,
    /** None does by itself, and together they do. */
    TOGETHER,
    /** They are as likely with the fault as without. */
    NEITHER,
    AGAINST;

    /** As in the mark: {@code for}, {@code together} … */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** In which way a reading is off. */
  public enum Reads {
    LOW,
    FAR_LOW,
    HIGH,
    FAR_HIGH,
    /** Next to nothing, where there should be something. */
    NOTHING,
    WRONG_SIGN,
    /** Another word, or a word for a number. */
    OTHERWISE;

    /** As in the mark: {@code low}, {@code far-low} … */
    public String key() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * A reading that does not fit what was entered and fits the fault.
   *
   * @param reading its id
   * @param beside whether it is off beside the other readings only, not by itself
   * @param expected what would fit; empty where the circuit as entered has no answer
   */
  public record Sign(
      String reading, Reads reads, boolean beside, Shown measured, Optional<Shown> expected) {}
}
