package org.holewise.school.store;

import java.util.Arrays;
import java.util.Optional;

/** What people do with things, each from one place to another. */
enum Act {
  DELIVERED(Place.SUPPLIER, Place.STORE),
  PACKED(Place.STORE, Place.CLASS),
  RETURNED(Place.CLASS, Place.STORE),
  USED_UP(Place.CLASS, Place.USED),
  BROKEN_IN_CLASS(Place.CLASS, Place.BROKEN),
  BROKEN_IN_STORE(Place.STORE, Place.BROKEN),
  COUNTED_MORE(Place.COUNT, Place.STORE),
  COUNTED_LESS(Place.STORE, Place.COUNT);

  private final Place from;
  private final Place to;

  Act(Place from, Place to) {
    this.from = from;
    this.to = to;
  }

  Place from() {
    return from;
  }

  Place to() {
    return to;
  }

  /** The act that takes things that way; what only puts a mistake right may be none. */
  static Optional<Act> of(Place from, Place to) {
    return Arrays.stream(values()).filter(act -> act.from == from && act.to == to).findFirst();
  }
}
