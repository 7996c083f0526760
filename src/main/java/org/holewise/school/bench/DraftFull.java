package org.holewise.school.bench;

/** A bench wanted to begin more entries than any board takes; nothing was changed. */
final class DraftFull extends RuntimeException {

  private static final long serialVersionUID = 1;

  DraftFull() {
    super("too many entries");
  }
}
