package org.holewise.engine.board;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Part;

/** What is odd about where a chip sits; keys in {@link BuildCheck}. */
record ChipCheck(String at, BoardModel board, Placed placed, List<String> pins) {

  static boolean chip(Part part) {
    return part.kind().footprint(part.fields()) instanceof Footprint.Dip;
  }

  /** One finding at most: the first that holds says all. */
  static List<Finding> findings(String at, BoardModel board, Placed placed, Part part) {
    var check = new ChipCheck(at, board, placed, part.kind().pins(part.fields()));
    return check.finding(placed.seat(part)).stream().toList();
  }

  private Optional<Finding> finding(Optional<Seat> seat) {
    if (seat.isEmpty()) {
      boolean whole = placed.holes().keySet().containsAll(pins);
      return whole ? say("/holes", "chip-spread", placed.ref()) : Optional.empty();
    }
    Hole first = seat.get().first();
    String where = placed.pin1().isPresent() ? "/pin1" : "/holes";
    if (first.rail()) {
      return say(where, "chip-in-rail", placed.ref(), first);
    }
    if (offBoard(seat.get())) {
      return say(where, "chip-off-board", placed.ref(), first, board.name());
    }
    if (placed.holes().size() < pins.size()) {
      return say(where, "chip-over-groove", placed.ref(), first);
    }
    return seat.get().acrossGroove()
        ? Optional.empty()
        : say(where, "chip-in-half", placed.ref(), first, opposite());
  }

  private boolean offBoard(Seat seat) {
    int reach = (seat.chip().pins() / 2 - 1) * (seat.turned() ? -1 : 1);
    int far = seat.first().column() + reach;
    return board.stripOrNone(seat.first()) < 0 || far < 1 || far > board.columns();
  }

  /** The hole of the pin that faces pin 1. */
  private Object opposite() {
    return placed.hole(pins.get(pins.size() - 1)).map(Hole::toString).orElse("");
  }

  private Optional<Finding> say(String where, String kind, Object... named) {
    return Optional.of(Finding.of(at + where, kind, named));
  }
}
