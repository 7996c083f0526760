package org.holewise.engine.reading;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.exercise.Measure;

/**
 * What a reading would be of an assembly, to first order in everything uncertain. Immutable by
 * convention: the array is not to be changed.
 *
 * @param function the meter's function; for what is seen, none of the meter's errors count
 * @param value of the instrument, or current through what is looked at (SI)
 * @param slopes by parameter of the assembly: d(value)/d(parameter)
 * @param floating whether it hangs on an unconnected net
 * @param own limit of an error that is this reading's alone, beside the meter's digits (SI)
 */
public record Forecast(
    Sort sort, Function function, double value, double[] slopes, boolean floating, double own) {

  Forecast(Sort sort, Function function, double value, double[] slopes, boolean floating) {
    this(sort, function, value, slopes, floating, 0);
  }

  /** What becomes of the value: shown as a number, as a lamp's state, or as a buzzer's. */
  public enum Sort {
    AMOUNT,
    LAMP,
    BUZZER,
    /** A lamp that goes on and off slowly enough to be seen. */
    FLICKER,
    /** A voltage as logic sees it: 0 where it just is low, 1 where it just is high. */
    LEVEL
  }

  static final String FLICKERING = "flickering";

  /** Neither low nor high. */
  static final String UNDEFINED = "undefined";

  static final List<String> LEVEL_WORDS = List.of("L", UNDEFINED, "H");

  private static final List<Brightness> LEVELS =
      List.of(
          new Brightness("L", 0),
          new Brightness(UNDEFINED, 1),
          new Brightness("H", Double.POSITIVE_INFINITY));

  /** A current below which a lamp is called so (A), as the exercise format says. */
  public record Brightness(String word, double below) {}

  /** Darkest first. */
  public static final List<Brightness> BRIGHTNESS =
      List.of(
          new Brightness("dark", 0.05e-3),
          new Brightness("dim", 1e-3),
          new Brightness("lit", Double.POSITIVE_INFINITY));

  /** Part of a current by which eyes differ on what to call a lamp. */
  private static final double EYE = 0.2;

  /** How often a lamp or a buzzer is called something else altogether. */
  private static final double MISNAMED = 0.02;

  /** Keeps a deviation from being nothing (SI). */
  private static final double TINY = 1e-9;

  static Sort sort(Measure measure) {
    if (measure instanceof Measure.Level) {
      return Sort.LEVEL;
    }
    return measure instanceof Measure.Seen
        ? Sort.LAMP
        : measure instanceof Measure.Joined ? Sort.BUZZER : Sort.AMOUNT;
  }

  /** What one would see, hear or read. */
  public Shown shown(Meter meter) {
    return sort == Sort.AMOUNT
        ? meter.overRange(function, value)
            ? new Shown.OverRange()
            : new Shown.Amount(value, Taken.unit(function))
        : new Shown.Word(words(sort, value, value, meter).get(0));
  }

  Forecast sloped(double[] other) {
    return new Forecast(sort, function, value, other, floating, own);
  }

  /** The same reading with the meter's leads exchanged. */
  public Forecast negated() {
    return scaled(-1);
  }

  /** So many times the reading. */
  public Forecast scaled(double factor) {
    double[] scaled = new double[slopes.length];
    for (int k = 0; k < scaled.length; k++) {
      scaled[k] = factor * slopes[k];
    }
    return new Forecast(sort, function, factor * value, scaled, floating, own);
  }

  /**
   * Probability that a word, or over-range, is what the instrument or the eye gives.
   *
   * @param deviation of the value (SI)
   */
  public double probability(Shown shown, double deviation, Meter meter) {
    if (shown instanceof Shown.OverRange) {
      return Double.isInfinite(value) ? 1 : beyond(meter.scale(function).top(), deviation);
    }
    String word = shown instanceof Shown.Word said ? said.word() : "";
    if (Double.isInfinite(value) || sort == Sort.FLICKER) {
      boolean said = words(sort, value, value, meter).contains(word);
      return said ? 1 - MISNAMED : MISNAMED / BRIGHTNESS.size();
    }
    double eye = sort == Sort.LEVEL ? 0 : EYE * Math.abs(value);
    double spread = Math.max(deviation, eye) + TINY;
    double above = Double.NEGATIVE_INFINITY;
    double chance = 0;
    for (Brightness step : steps(meter)) {
      if (step.word().equals(word)) {
        chance +=
            NormalTail.below(step.below(), value, spread) - NormalTail.below(above, value, spread);
      }
      above = step.below();
    }
    return (1 - MISNAMED) * chance + MISNAMED / BRIGHTNESS.size();
  }

  private double beyond(double top, double deviation) {
    double spread = deviation + TINY;
    return NormalTail.below(-top, value, spread) + 1 - NormalTail.below(top, value, spread);
  }

  private List<Brightness> steps(Meter meter) {
    if (sort == Sort.LEVEL) {
      return LEVELS;
    }
    return sort == Sort.LAMP
        ? BRIGHTNESS
        : List.of(
            new Brightness("yes", meter.buzzerBelow()),
            new Brightness("no", Double.POSITIVE_INFINITY));
  }

  /** The words that values from {@code low} to {@code high} are called by. */
  static List<String> words(Sort sort, double low, double high, Meter meter) {
    if (sort == Sort.FLICKER) {
      return List.of(FLICKERING);
    }
    if (sort == Sort.BUZZER) {
      return low >= meter.buzzerBelow()
          ? List.of("no")
          : high < meter.buzzerBelow() ? List.of("yes") : List.of("yes", "no");
    }
    var words = new ArrayList<String>();
    double above = Double.NEGATIVE_INFINITY;
    for (Brightness brightness : sort == Sort.LEVEL ? LEVELS : BRIGHTNESS) {
      if (low < brightness.below() && high >= above) {
        words.add(brightness.word());
      }
      above = brightness.below();
    }
    return words;
  }
}
