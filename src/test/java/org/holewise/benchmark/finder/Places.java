package org.holewise.benchmark.finder;

import java.util.List;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.diagnosis.Place;

/** Places as texts that can be compared. */
final class Places {
  static final String NONE = "none";

  private Places() {}

  /** All that a place names: two parts that have traded places are both at fault. */
  static List<String> of(Place place, BoardModel board) {
    if (place instanceof Place.OfParts parts) {
      return List.of(part(parts.one()), part(parts.other()));
    }
    return place instanceof Place.OfReadings readings
        ? List.of(reading(readings.one()), reading(readings.other()))
        : List.of(single(place, board));
  }

  private static String single(Place place, BoardModel board) {
    if (place instanceof Place.OfStrips strips) {
      int one = board.strip(strips.one()).orElse(-1);
      int other = board.strip(strips.other()).orElse(-1);
      return strips(Math.min(one, other), Math.max(one, other));
    }
    if (place instanceof Place.OfLead lead) {
      return lead(lead.pin().toString());
    }
    if (place instanceof Place.OfLink link) {
      return link(link.link());
    }
    if (place instanceof Place.OfPart part) {
      return part(part.ref());
    }
    if (place instanceof Place.OfSupply supply) {
      return supply(supply.ref());
    }
    return place instanceof Place.OfReading reading
        ? reading(reading.id())
        : place instanceof Place.Nowhere ? NONE : place.toString();
  }

  static String strips(int one, int other) {
    return "strips " + one + " " + other;
  }

  static String lead(String pin) {
    return "lead " + pin;
  }

  static String link(int number) {
    return "link " + number;
  }

  static String part(String ref) {
    return "part " + ref;
  }

  static String supply(String ref) {
    return "supply " + ref;
  }

  static String reading(String id) {
    return "reading " + id;
  }
}
