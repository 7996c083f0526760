package org.holewise.school.handin;

/**
 * What was wrong with a hand-in, as somebody or something says it.
 *
 * @param kind of suspect, such as {@code open-contact}, or of difference, such as {@code
 *     column-off}
 * @param place where, such as {@code R1.2}; may be empty
 */
record Cause(String kind, String place, String note) {

  Cause {
    note = note.strip();
  }

  static Cause of(Fault fault) {
    return new Cause(fault.kind(), fault.place(), "");
  }

  static Cause nothing() {
    return new Cause(Taught.NONE, "", "");
  }

  boolean isNothing() {
    return kind.equals(Taught.NONE);
  }
}
