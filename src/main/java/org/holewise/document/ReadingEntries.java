package org.holewise.document;

import java.util.Optional;
import org.holewise.document.text.Texts;
import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.reading.Expected;
import org.holewise.engine.reading.Judged;
import org.holewise.engine.reading.Shown;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes readings: those that were judged, and the one to take next. */
final class ReadingEntries {
  private ReadingEntries() {}

  static ObjectNode reading(Judged judged, Texts texts) {
    var entry = JsonNodeFactory.instance.objectNode().put("id", judged.reading().id());
    judged.measured().ifPresent(shown -> put(entry, "measured", shown));
    unit(judged).ifPresent(unit -> entry.put("unit", unit));
    judged.wanted().ifPresent(expected -> wanted(entry, expected));
    judged.asBuilt().ifPresent(expected -> expected(entry.putObject("asBuilt"), expected));
    entry.put("verdict", judged.verdict().key());
    texts.reading(judged).ifPresent(text -> entry.put("text", text));
    return entry;
  }

  private static void wanted(ObjectNode entry, Expected expected) {
    expected(entry, expected);
    if (expected.shown() instanceof Shown.Amount) {
      entry
          .putArray("worst")
          .add(Numbers.six(expected.worstLow()))
          .add(Numbers.six(expected.worstHigh()));
    }
  }

  /** A word or an over-range has no limits. */
  private static void expected(ObjectNode entry, Expected expected) {
    put(entry, "expected", expected.shown());
    if (expected.shown() instanceof Shown.Amount) {
      entry.put("low", Numbers.six(expected.low())).put("high", Numbers.six(expected.high()));
    }
    if (expected.floating()) {
      entry.put("floating", true);
    }
  }

  private static void put(ObjectNode entry, String field, Shown shown) {
    if (shown instanceof Shown.Amount amount) {
      entry.put(field, Numbers.six(amount.value()));
    } else {
      entry.put(field, shown instanceof Shown.Word word ? word.word() : "OL");
    }
  }

  /** The unit of the reading, whichever of its values is known; empty for a word. */
  private static Optional<String> unit(Judged judged) {
    Measure measure = judged.reading().measure();
    if (measure instanceof Measure.Volts) {
      return Optional.of("V");
    }
    if (measure instanceof Measure.Amps) {
      return Optional.of("A");
    }
    return measure instanceof Measure.Ohms ? Optional.of("Ω") : Optional.empty();
  }

  static ObjectNode next(NextReading next, Texts texts) {
    var entry = JsonNodeFactory.instance.objectNode();
    put(entry, next.measure());
    return entry
        .put("when", next.when())
        .put("gain", Numbers.six(next.gain()))
        .put("text", texts.next(next));
  }

  private static void put(ObjectNode entry, Measure measure) {
    if (measure instanceof Measure.Volts m) {
      pair(entry, "volts", m.red(), m.black());
    } else if (measure instanceof Measure.Amps m) {
      entry.put("amps", m.pin().toString());
    } else if (measure instanceof Measure.Ohms m) {
      pair(entry, "ohms", m.one(), m.other());
      if (m.alone()) {
        entry.put("alone", true);
      }
    } else if (measure instanceof Measure.Joined m) {
      pair(entry, "joined", m.one(), m.other());
    } else {
      entry.put("seen", ((Measure.Seen) measure).ref());
    }
  }

  private static void pair(ObjectNode entry, String field, Probe one, Probe other) {
    entry.putArray(field).add(one.toString()).add(other.toString());
  }
}
