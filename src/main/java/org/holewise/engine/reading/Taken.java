package org.holewise.engine.reading;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.quantity.Parsed;
import org.holewise.engine.quantity.ReadingText;
import org.holewise.engine.quantity.Unit;

/**
 * A reading as far as it can be understood: what was shown, or why not.
 *
 * @param shown empty where it is missing or unreadable
 * @param step one unit in the last place written (SI); 0 where that is not known
 * @param unreadable empty unless something was written that cannot be read
 */
public record Taken(Optional<Shown> shown, Optional<Parsed.Why> unreadable, double step) {
  private static final List<String> LAMP = List.of("lit", "dim", "dark", "flickering", "hot");
  private static final List<String> BUZZER = List.of("yes", "no");
  private static final List<String> LEVEL = Forecast.LEVEL_WORDS;

  static final Taken MISSING = new Taken(Optional.empty(), Optional.empty(), 0);

  /**
   * What was written, read as the measure and the meter ask; an empty text is a missing reading.
   */
  public static Taken of(Measure measure, Written written, Meter meter) {
    if (measure instanceof Measure.Seen) {
      return word(written.text(), LAMP);
    }
    if (measure instanceof Measure.Joined) {
      return word(written.text(), BUZZER);
    }
    if (measure instanceof Measure.Level) {
      return word(written.text(), LEVEL);
    }
    Function function = function(measure);
    if (written.si().isPresent()) {
      return got(new Shown.Amount(written.si().getAsDouble(), unit(function)));
    }
    String text = plain(written.text(), function);
    var result = ReadingText.parse(text, unit(function), meter.scale(function).top());
    if (result instanceof ReadingText.Value value) {
      return new Taken(
          Optional.of(new Shown.Amount(value.si(), unit(function))),
          Optional.empty(),
          ReadingText.step(text));
    }
    return result instanceof ReadingText.Unreadable unreadable
        ? cannot(unreadable.why())
        : got(new Shown.OverRange());
  }

  /** How much further than on its best range its digits may be off (SI). */
  public double coarser(Measure measure, Meter meter) {
    return shown.isPresent() && shown.get() instanceof Shown.Amount amount
        ? meter.coarser(function(measure), amount.value(), step)
        : 0;
  }

  /** The function of the meter that takes a measure. */
  public static Function function(Measure measure) {
    if (measure instanceof Measure.Ratio ratio) {
      return ratio.decibel() ? Function.DECIBELS : Function.RATIO;
    }
    return switch (measure.key()) {
      case "volts", "level" -> Function.VOLTS;
      case "amps", "seen" -> Function.AMPS;
      case "drop" -> Function.DROP;
      case "acvolts" -> Function.ACVOLTS;
      case "peak" -> Function.PEAK;
      case "frequency", "corner", "resonance" -> Function.FREQUENCY;
      case "quality" -> Function.RATIO;
      default -> Function.OHMS;
    };
  }

  static Unit unit(Function function) {
    return switch (function) {
      case VOLTS, DROP, ACVOLTS, PEAK -> Unit.VOLT;
      case AMPS -> Unit.AMP;
      case OHMS -> Unit.OHM;
      case RATIO -> Unit.COUNT;
      case DECIBELS -> Unit.DECIBEL;
      case FREQUENCY -> Unit.HERTZ;
    };
  }

  /** What says how an AC voltage was measured, after its unit: {@code Vrms}, {@code V AC}, … */
  private static String plain(String text, Function function) {
    return switch (function) {
      case ACVOLTS -> text.replaceFirst("(?i)(?<=V) *(ac|rms|eff)\\.? *$", "");
      case PEAK -> text.replaceFirst("(?i)(?<=V) *(pp|p-p|pk-pk) *$", "");
      default -> text;
    };
  }

  private static Taken word(String text, List<String> known) {
    String word = text.strip();
    if (word.isEmpty()) {
      return MISSING;
    }
    return known.stream()
        .filter(word::equalsIgnoreCase)
        .findFirst()
        .map(one -> got(new Shown.Word(one)))
        .orElseGet(() -> cannot(Parsed.Why.NOT_A_WORD));
  }

  private static Taken got(Shown shown) {
    return new Taken(Optional.of(shown), Optional.empty(), 0);
  }

  private static Taken cannot(Parsed.Why why) {
    return why == Parsed.Why.EMPTY ? MISSING : new Taken(Optional.empty(), Optional.of(why), 0);
  }
}
