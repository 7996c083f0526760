package org.holewise.document;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.holewise.document.text.Texts;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.diagnosis.Evidence;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.quantity.Unit;
import org.holewise.engine.reading.Shown;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes suspects, and says where a place is by the fields that belong to it. */
final class PlaceEntries {
  private final List<Link> links;

  PlaceEntries(List<Link> links) {
    this.links = links;
  }

  ObjectNode suspect(Suspect suspect, List<Suspect> all, Texts texts) {
    Suspect.Guess likeliest = suspect.likeliest();
    var entry = JsonNodeFactory.instance.objectNode().put("kind", likeliest.kind());
    put(entry, suspect.place(), likeliest.holes());
    value(entry, likeliest);
    entry.put("probability", Numbers.six(suspect.probability()));
    var kinds = entry.putArray("kinds");
    suspect.kinds().forEach(guess -> kinds.add(kind(guess)));
    var alike = entry.putArray("alike");
    suspect.alike().forEach(alike::add);
    evidence(entry, suspect.evidence());
    return entry.put("text", texts.suspect(suspect, all));
  }

  private static void evidence(ObjectNode entry, Evidence evidence) {
    if (evidence.bearing() == Evidence.Bearing.NONE) {
      return;
    }
    entry.put("speaks", evidence.bearing().key());
    var signs = entry.putArray("evidence");
    for (Evidence.Sign sign : evidence.signs()) {
      var one = signs.addObject().put("reading", sign.reading()).put("reads", sign.reads().key());
      if (sign.beside()) {
        one.put("beside", true);
      }
      ReadingEntries.put(one, "measured", sign.measured());
      sign.expected().ifPresent(shown -> ReadingEntries.put(one, "expected", shown));
      unit(sign).ifPresent(unit -> one.put("unit", unit));
    }
  }

  private static Optional<String> unit(Evidence.Sign sign) {
    return Stream.of(Optional.of(sign.measured()), sign.expected())
        .flatMap(Optional::stream)
        .filter(Shown.Amount.class::isInstance)
        .map(shown -> ((Shown.Amount) shown).unit().symbol())
        .filter(symbol -> !symbol.isEmpty())
        .findFirst();
  }

  private static ObjectNode kind(Suspect.Guess guess) {
    var entry = JsonNodeFactory.instance.objectNode().put("kind", guess.kind());
    if (!guess.holes().isEmpty()) {
      WiringEntries.holes(entry.putArray("holes"), guess.holes());
    }
    value(entry, guess);
    return entry.put("probability", Numbers.six(guess.probability()));
  }

  private static void value(ObjectNode entry, Suspect.Guess guess) {
    if (Double.isFinite(guess.value())) {
      entry.put("value", Numbers.six(guess.value()));
      if (guess.unit() != Unit.OHM) {
        entry.put("unit", guess.unit().symbol());
      }
    }
    if (guess.kind().equals("swapped-pins")) {
      var order = entry.putArray("order");
      List.of(guess.how().split(" ", -1)).forEach(order::add);
    } else if (!guess.how().isEmpty()) {
      entry.put("how", guess.how());
    }
  }

  /** The fields that say where; a place's own holes stand where no others are given. */
  void put(ObjectNode entry, Place place, List<Hole> holes) {
    List<Hole> where = holes.isEmpty() ? own(place) : holes;
    if (place instanceof Place.OfLead lead) {
      entry.put("ref", lead.pin().ref()).put("pin", lead.pin().name());
    } else if (place instanceof Place.OfPart part) {
      entry.put("ref", part.ref());
    } else if (place instanceof Place.OfParts parts) {
      entry.putArray("refs").add(parts.one()).add(parts.other());
    } else if (place instanceof Place.OfSupply supply) {
      entry.put("ref", supply.ref());
    } else if (place instanceof Place.OfReading reading) {
      entry.put("reading", reading.id());
    } else if (place instanceof Place.OfReadings readings) {
      entry.putArray("readings").add(readings.one()).add(readings.other());
    } else if (place instanceof Place.OfLink link) {
      entry.put("link", link.link());
    }
    if (!where.isEmpty()) {
      WiringEntries.holes(entry.putArray("holes"), where);
    }
  }

  private List<Hole> own(Place place) {
    if (place instanceof Place.OfStrips strips) {
      return List.of(strips.one(), strips.other());
    }
    if (place instanceof Place.OfLink link && link.link() < links.size()) {
      return List.of(links.get(link.link()).from(), links.get(link.link()).to());
    }
    return List.of();
  }
}
