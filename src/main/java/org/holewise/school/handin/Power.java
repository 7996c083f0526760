package org.holewise.school.handin;

import java.time.Instant;
import java.util.Optional;
import org.holewise.school.session.LabSession;

/** Whether a bench may switch on, as far as its record tells. */
public enum Power {
  /** It has not asked yet. */
  NOT_ASKED,
  /** What it asked about must not be switched on. */
  STOPPED,
  /** The layout is no longer the one that it asked about: power off, ask again. */
  CHANGED,
  /** A teacher looks first. */
  WAITS_FOR_TEACHER,
  ON;

  /** A teacher's look after the question stands above what the gate said. */
  public static Power of(
      LabSession session, String layout, Optional<GateCheck> asked, Optional<Instant> looked) {
    if (asked.isEmpty()) {
      return NOT_ASKED;
    }
    GateCheck check = asked.get();
    boolean seen = looked.filter(look -> !look.isBefore(check.at())).isPresent();
    if (!check.layout().equals(layout)) {
      return CHANGED;
    }
    if (seen) {
      return ON;
    }
    if (!check.go()) {
      return STOPPED;
    }
    return session.lookFirst() ? WAITS_FOR_TEACHER : ON;
  }
}
