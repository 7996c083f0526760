package org.holewise.document;

import java.util.List;
import org.holewise.document.text.Texts;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.quantity.Unit;
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
    return entry.put("text", texts.suspect(suspect, all));
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
