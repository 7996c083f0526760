package org.holewise.school.store;

/** How many of an item there are, in the store and out with classes. */
record Level(Item item, int inStore, int withClasses) {

  /** How far the store is from running out, the worst first. */
  enum State {
    NONE,
    LOW,
    ENOUGH
  }

  public State state() {
    if (inStore <= 0) {
      return State.NONE;
    }
    return inStore < item.minimum() ? State.LOW : State.ENOUGH;
  }
}
