package org.holewise.document;

import java.util.List;
import java.util.Optional;
import org.holewise.document.text.Texts;
import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.quantity.Unit;
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

  static void put(ObjectNode entry, String field, Shown shown) {
    if (shown instanceof Shown.Amount amount) {
      entry.put(field, Numbers.six(amount.value()));
    } else {
      entry.put(field, shown instanceof Shown.Word word ? word.word() : "OL");
    }
  }

  /** The unit of the reading, whichever of its values is known; empty where it has none. */
  private static Optional<String> unit(Judged judged) {
    return judged.reading().measure().unit().map(Unit::symbol).filter(unit -> !unit.isEmpty());
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
    List<String> points = measure.points().stream().map(Probe::toString).toList();
    if (measure instanceof Measure.Seen seen) {
      entry.put("seen", seen.ref());
    } else if (measure instanceof Measure.Compared compared) {
      var whole = entry.putObject(compared.key());
      list(whole, "of", points.subList(0, 2));
      list(whole, "to", points.subList(2, 4));
      if (!compared.choice().isEmpty()) {
        whole.put(ComparedShape.field(compared.key()), compared.choice());
      }
    } else if (points.size() == 1) {
      entry.put(measure.key(), points.get(0));
    } else {
      list(entry, measure.key(), points);
    }
    if (measure instanceof Measure.Ohms ohms && ohms.alone()) {
      entry.put("alone", true);
    }
  }

  private static void list(ObjectNode entry, String field, List<String> words) {
    words.forEach(entry.putArray(field)::add);
  }
}
