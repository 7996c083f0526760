package org.holewise.school.store;

/**
 * What a session has had of an item.
 *
 * @param packed what was packed for it and not taken back as a mistake
 * @param out what is still with the class
 */
record Use(long session, long item, int packed, int out, int used, int broken) {

  static Use none(long session, long item) {
    return new Use(session, item, 0, 0, 0, 0);
  }
}
