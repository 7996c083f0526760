package org.holewise.school.sheet;

import java.util.Optional;
import org.holewise.document.text.Messages;
import org.holewise.engine.quantity.Display;
import org.holewise.engine.quantity.Unit;
import org.holewise.engine.reading.Expected;
import org.holewise.engine.reading.Shown;
import org.holewise.engine.reading.Verdict;
import org.holewise.school.sheet.KeptMark.Judgement;

/**
 * A judged reading as the table shows it. Cells without anything to show are empty.
 *
 * @param wanted what the schematic's circuit gives, {@code band} where its readings lie
 * @param built what the circuit as built gives, where that differs
 * @param state look of the verdict: fits, look or waits
 */
public record Readout(
    String id,
    String label,
    String measured,
    String wanted,
    String band,
    String built,
    String state,
    String verdict,
    String advice) {

  /** Below what any meter of a class shows (V, A, Ω). */
  private static final double NOTHING = 1e-9;

  static Readout of(Judgement judged, String label, String typed) {
    String wanted = value(judged.wanted());
    String band = band(judged.wanted());
    String built = value(judged.asBuilt());
    String builtBand = band(judged.asBuilt());
    boolean same = wanted.equals(built) && band.equals(builtBand);
    return new Readout(
        judged.id(),
        label,
        judged.measured().map(Readout::shown).orElse(typed),
        wanted,
        band,
        same ? "" : built,
        state(judged.verdict()),
        word(judged.verdict()),
        advice(judged));
  }

  /** What to do about it, unless that only says the verdict again. */
  static String advice(Judgement judged) {
    return switch (judged.verdict()) {
      case MISSING, OUTSIDE -> "";
      case WITHIN, UNUSUAL, OVER_RANGE, UNREADABLE -> judged.text();
    };
  }

  /** The word for a verdict. */
  static String word(Verdict verdict) {
    return Messages.english().say("verdict." + verdict.key());
  }

  static String state(Verdict verdict) {
    return switch (verdict) {
      case WITHIN, UNUSUAL -> "fits";
      case MISSING -> "waits";
      case OUTSIDE, OVER_RANGE, UNREADABLE -> "look";
    };
  }

  private static String value(Optional<Expected> expected) {
    return expected.map(Expected::shown).map(Readout::shown).orElse("");
  }

  private static String band(Optional<Expected> expected) {
    return expected
        .filter(e -> e.shown() instanceof Shown.Amount)
        .map(e -> range(e, (Shown.Amount) e.shown()))
        .orElse("");
  }

  private static String range(Expected expected, Shown.Amount amount) {
    return Messages.english()
        .say(
            "range.from-to",
            shown(expected.low(), amount.unit()),
            shown(expected.high(), amount.unit()));
  }

  private static String shown(double si, Unit unit) {
    return Display.reading(Math.abs(si) < NOTHING ? 0 : si, unit);
  }

  private static String shown(Shown shown) {
    if (shown instanceof Shown.Amount amount) {
      return shown(amount.value(), amount.unit());
    }
    return shown instanceof Shown.Word word ? word.word() : "OL";
  }
}
