package org.holewise.school.store;

import java.util.List;
import java.util.Optional;

/**
 * What is moved at once, all of it or nothing.
 *
 * @param key made when the form was shown, so that sending it twice moves nothing twice
 * @param session the session that it is for
 */
record Slip(String key, Optional<Long> session, String note, List<Line> lines) {

  record Line(long item, Place from, Place to, int quantity) {

    static Line of(long item, Act act, int quantity) {
      return new Line(item, act.from(), act.to(), quantity);
    }

    Line back() {
      return new Line(item, to, from, quantity);
    }

    /** What this takes from a place, less than nothing where it brings. */
    int takes(Place place) {
      return (from == place ? quantity : 0) - (to == place ? quantity : 0);
    }
  }

  /** The items that it moves, in the one order in which everybody locks them. */
  List<Long> items() {
    return lines.stream().map(Line::item).distinct().sorted().toList();
  }

  /** What it takes of an item from a place. */
  int takes(long item, Place place) {
    return lines.stream()
        .filter(line -> line.item() == item)
        .mapToInt(line -> line.takes(place))
        .sum();
  }
}
