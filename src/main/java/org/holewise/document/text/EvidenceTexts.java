package org.holewise.document.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.holewise.engine.diagnosis.Evidence;
import org.holewise.engine.diagnosis.Evidence.Bearing;
import org.holewise.engine.diagnosis.Evidence.Reads;
import org.holewise.engine.diagnosis.Evidence.Sign;
import org.holewise.engine.quantity.Display;
import org.holewise.engine.reading.Shown;

/**
 * Says which readings speak for a fault, as the end of the sentence that says what it is. A student
 * is told in words which way a reading is off, a teacher in figures.
 */
final class EvidenceTexts {
  /** More readings than these make no sentence. */
  private static final int MOST = 2;

  /** As a mark is written, so that one that was kept is said in the same words. */
  private static final MathContext SIX = new MathContext(6, RoundingMode.HALF_EVEN);

  /** Below what any meter shows (SI). */
  private static final double NOTHING = 1e-9;

  private final Messages messages;
  private final Names names;
  private final boolean figures;

  /**
   * @param figures whether to say what would have fitted
   */
  EvidenceTexts(Messages messages, Names names, boolean figures) {
    this.messages = messages;
    this.names = names;
    this.figures = figures;
  }

  String of(Evidence evidence) {
    if (evidence.bearing() != Bearing.FOR) {
      return messages.say("evidence." + evidence.bearing().key());
    }
    String key = evidence.signs().get(0).beside() ? "evidence.beside" : "evidence.for";
    List<String> signs = evidence.signs().stream().limit(MOST).map(this::sign).distinct().toList();
    return messages.say(key, names.all(signs));
  }

  private String sign(Sign sign) {
    String label =
        names
            .label(sign.reading())
            .map(of -> messages.say("evidence.label", of))
            .orElseGet(() -> messages.say("evidence.asked"));
    String measured = shown(sign.measured());
    if (figures && sign.expected().isPresent()) {
      return messages.say(
          "evidence.figures", label, measured, sign.expected().map(EvidenceTexts::shown).get());
    }
    return sign.reads() == Reads.OTHERWISE
        ? messages.say("evidence.otherwise", label, measured)
        : messages.say("evidence." + sign.reads().key(), label);
  }

  private static String shown(Shown shown) {
    if (shown instanceof Shown.Amount amount) {
      double value = new BigDecimal(amount.value()).round(SIX).doubleValue();
      return Display.reading(Math.abs(value) < NOTHING ? 0 : value, amount.unit());
    }
    return shown instanceof Shown.Word word ? word.word() : "OL";
  }
}
