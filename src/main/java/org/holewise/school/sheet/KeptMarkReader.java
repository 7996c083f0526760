package org.holewise.school.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.holewise.engine.board.Finding;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Act;
import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.marking.Caution;
import org.holewise.engine.marking.Points;
import org.holewise.engine.part.Pin;
import org.holewise.engine.quantity.Unit;
import org.holewise.engine.reading.Expected;
import org.holewise.engine.reading.Shown;
import org.holewise.engine.reading.Verdict;
import org.holewise.school.sheet.KeptMark.Change;
import org.holewise.school.sheet.KeptMark.Difference;
import org.holewise.school.sheet.KeptMark.Judgement;
import org.holewise.school.sheet.KeptMark.Told;

/** Reads the document of a mark, member by member. */
final class KeptMarkReader {
  private KeptMarkReader() {}

  static KeptMark read(String document) {
    Entry mark = Entry.read(document);
    Entry wiring = mark.in("wiring");
    return new KeptMark(
        mark.text("engine"),
        mark.text("priors"),
        mark.all("findings", KeptMarkReader::finding),
        wiring.flag("matches"),
        wiring.all("differences", KeptMarkReader::difference),
        mark.all("readings", KeptMarkReader::judgement),
        mark.all("suspects", KeptPlaces::suspect),
        mark.find("next").map(KeptMarkReader::next),
        mark.all("try", KeptMarkReader::act),
        mark.all("cautions", KeptMarkReader::caution),
        points(mark.in("marks")));
  }

  private static Told<Finding> finding(Entry entry) {
    return told(entry, Finding.of(entry.text("at"), entry.text("kind")));
  }

  private static Difference difference(Entry entry) {
    return new Difference(change(entry), entry.all("or", KeptMarkReader::change));
  }

  private static Change change(Entry entry) {
    List<Hole> now = entry.holes("hole").isEmpty() ? entry.holes("holes") : entry.holes("hole");
    return new Change(
        entry.word("ref").or(() -> entry.word("place")),
        entry.word("pin"),
        entry.whole("link").or(() -> entry.whole("remove")),
        now.isEmpty() ? instead(entry) : now,
        entry.text("text"));
  }

  /** Of what has no hole yet: the first of those where it would be right, for each end. */
  private static List<Hole> instead(Entry entry) {
    List<List<Hole>> ends =
        entry.has("add") ? entry.all("add", Entry::holes) : List.of(entry.holes("move"));
    return ends.stream().flatMap(end -> end.stream().limit(1)).toList();
  }

  private static Judgement judgement(Entry entry) {
    String unit = entry.text("unit");
    return new Judgement(
        entry.text("id"),
        entry.find("measured").map(shown -> shown(shown, unit)),
        expected(entry, unit),
        entry.find("asBuilt").flatMap(built -> expected(built, unit)),
        Verdict.valueOf(entry.text("verdict").toUpperCase(Locale.ROOT).replace('-', '_')),
        entry.text("text"));
  }

  private static Optional<Expected> expected(Entry entry, String unit) {
    return entry
        .find("expected")
        .map(
            shown ->
                new Expected(
                    shown(shown, unit),
                    entry.number("low"),
                    entry.number("high"),
                    entry.number("worst", 0),
                    entry.number("worst", 1),
                    entry.flag("floating")));
  }

  static Shown shown(Entry value, String unit) {
    if (value.isNumber()) {
      return new Shown.Amount(value.number(), unit(unit));
    }
    return value.text().equals("OL") ? new Shown.OverRange() : new Shown.Word(value.text());
  }

  static Unit unit(String symbol) {
    return List.of(Unit.values()).stream()
        .filter(unit -> unit.symbol().equals(symbol))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no unit " + symbol));
  }

  private static Told<NextReading> next(Entry entry) {
    return told(entry, new NextReading(measure(entry), entry.text("when"), entry.number("gain")));
  }

  private static Measure measure(Entry entry) {
    for (String kind : Measure.BETWEEN) {
      if (entry.has(kind)) {
        Measure.Pair at = pair(entry, kind);
        return Measure.between(kind, at.red(), at.black(), entry.flag("alone"));
      }
    }
    for (String kind : Measure.COMPARED) {
      if (entry.has(kind)) {
        Entry whole = entry.in(kind);
        String choice = whole.word("in").or(() -> whole.word("end")).orElse("");
        return Measure.compared(kind, pair(whole, "of"), pair(whole, "to"), choice);
      }
    }
    return Measure.AT_A_LEAD.stream()
        .flatMap(kind -> pin(entry, kind).map(pin -> Measure.at(kind, pin)).stream())
        .findFirst()
        .orElseGet(() -> new Measure.Seen(entry.text("seen")));
  }

  private static Optional<Pin> pin(Entry entry, String kind) {
    return entry.word(kind).flatMap(Pin::read);
  }

  private static Measure.Pair pair(Entry entry, String field) {
    return new Measure.Pair(probe(entry, field, 0), probe(entry, field, 1));
  }

  private static Probe probe(Entry entry, String field, int end) {
    String written = entry.text(field, end);
    return Pin.read(written)
        .map(Probe::at)
        .or(() -> Hole.read(written).map(Probe::at))
        .orElseThrow(() -> new IllegalArgumentException("no probe " + written));
  }

  private static Told<Act> act(Entry entry) {
    String kind = entry.text("act");
    return told(
        entry,
        new Act(
            kind, KeptPlaces.place(kind, entry), entry.holes("holes"), entry.number("minutes")));
  }

  private static Told<Caution> caution(Entry entry) {
    return told(entry, new Caution(entry.text("kind"), entry.text("ref"), List.of()));
  }

  private static Points points(Entry marks) {
    return new Points(
        (int) marks.number("wiring"),
        (int) marks.number("readings"),
        (int) marks.number("of"),
        marks.flag("held"));
  }

  static <T> Told<T> told(Entry entry, T what) {
    return new Told<>(what, entry.text("text"));
  }
}
