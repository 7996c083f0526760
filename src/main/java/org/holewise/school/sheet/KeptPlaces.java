package org.holewise.school.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Evidence;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.diagnosis.Suspect.Guess;
import org.holewise.engine.part.Pin;
import org.holewise.engine.quantity.Unit;
import org.holewise.school.sheet.KeptMark.Told;

/**
 * Reads suspects, and which place the fields of an entry stand for: a rail and two strips are
 * written by their holes alone, and the kind of fault or act tells them apart.
 */
final class KeptPlaces {
  private static final List<String> OF_RAILS = List.of("rail-gap", "bridge-gap");
  private static final List<String> OF_SUPPLIES =
      List.of(
          "supply-off",
          "supply-low",
          "supply-reversed",
          "supply-limit",
          "check-supply",
          "switch-on");

  private KeptPlaces() {}

  static Told<Suspect> suspect(Entry entry) {
    return KeptMarkReader.told(
        entry,
        new Suspect(
            place(entry.text("kind"), entry),
            entry.all("kinds", KeptPlaces::guess),
            entry.number("probability"),
            entry.all("alike", at -> (int) at.number()),
            evidence(entry)));
  }

  /** Marks of earlier engines have none. */
  private static Evidence evidence(Entry entry) {
    return entry
        .word("speaks")
        .map(
            speaks ->
                new Evidence(
                    Evidence.Bearing.valueOf(constant(speaks)),
                    entry.all("evidence", KeptPlaces::sign)))
        .orElse(Evidence.NONE);
  }

  private static Evidence.Sign sign(Entry entry) {
    String unit = entry.text("unit");
    return new Evidence.Sign(
        entry.text("reading"),
        Evidence.Reads.valueOf(constant(entry.text("reads"))),
        entry.flag("beside"),
        KeptMarkReader.shown(entry.in("measured"), unit),
        entry.find("expected").map(shown -> KeptMarkReader.shown(shown, unit)));
  }

  private static String constant(String key) {
    return key.toUpperCase(Locale.ROOT).replace('-', '_');
  }

  private static Guess guess(Entry entry) {
    return new Guess(
        entry.text("kind"),
        entry.holes("holes"),
        entry.has("value") ? entry.number("value") : Double.NaN,
        entry.word("unit").map(KeptMarkReader::unit).orElse(Unit.OHM),
        entry.has("order") ? String.join(" ", entry.all("order", Entry::text)) : entry.text("how"),
        entry.number("probability"));
  }

  static Place place(String kind, Entry entry) {
    Optional<String> ref = entry.word("ref");
    if (ref.isPresent()) {
      return ofPart(kind, ref.get(), entry.word("pin"));
    }
    if (entry.has("refs")) {
      List<String> refs = entry.all("refs", Entry::text);
      return new Place.OfParts(refs.get(0), refs.get(1));
    }
    if (entry.has("readings")) {
      List<String> readings = entry.all("readings", Entry::text);
      return new Place.OfReadings(readings.get(0), readings.get(1));
    }
    if (entry.has("reading")) {
      return new Place.OfReading(entry.text("reading"));
    }
    return entry
        .whole("link")
        .<Place>map(Place.OfLink::new)
        .orElseGet(() -> ofHoles(kind, entry.holes("holes")));
  }

  private static Place ofPart(String kind, String ref, Optional<String> pin) {
    if (pin.isPresent()) {
      return new Place.OfLead(new Pin(ref, pin.get()));
    }
    return OF_SUPPLIES.contains(kind) ? new Place.OfSupply(ref) : new Place.OfPart(ref);
  }

  private static Place ofHoles(String kind, List<Hole> holes) {
    if (holes.isEmpty()) {
      return new Place.Nowhere();
    }
    Hole first = holes.get(0);
    return OF_RAILS.contains(kind)
        ? new Place.OfRail(first.board(), first.track())
        : new Place.OfStrips(first, holes.get(holes.size() - 1));
  }
}
