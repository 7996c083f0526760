package org.holewise.school.store;

/** Where things are; from one to another goes every movement. */
enum Place {
  SUPPLIER,
  STORE,
  /** Out with a class, for one session. */
  CLASS,
  USED,
  BROKEN,
  /** What a count found too many or too few came from or went there. */
  COUNT
}
