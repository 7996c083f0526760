package org.holewise.school.room;

import java.util.Optional;
import org.holewise.engine.marking.Points;
import org.holewise.school.handin.Fault;

/**
 * How a hand-in was marked. Immutable.
 *
 * @param fault what its mark points to first
 * @param caution kind of what can hurt in that build; empty where nothing
 * @param own the teacher's marks, which count where there are any
 */
record Result(Points points, Optional<Fault> fault, String caution, Optional<Own> own) {

  /** A teacher's own marks and why; the last ones given. */
  record Own(int wiring, int readings, String reason) {}

  public int wiring() {
    return own.map(Own::wiring).orElse(points.wiring());
  }

  public int readings() {
    return own.map(Own::readings).orElse(points.readings());
  }

  public int total() {
    return wiring() + readings();
  }

  /** Whether wiring marks still wait for a teacher. */
  public boolean held() {
    return points.held() && own.isEmpty();
  }

  /** Whether nothing is left to do: all marks, by the engine or by a teacher. */
  public boolean sound() {
    return !held() && Math.max(total(), points.total()) >= points.of();
  }
}
