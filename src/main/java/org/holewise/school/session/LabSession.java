package org.holewise.school.session;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.holewise.engine.exercise.Exercise;
import org.holewise.school.library.ExerciseVersion;
import org.holewise.school.roster.ClassGroup;

/**
 * One class builds one exercise on one day.
 *
 * @param lookFirst whether a teacher looks at each bench before it switches on
 * @param released when results were released to the students
 * @param changes counts what the room shows: another count, another view
 */
public record LabSession(
    long id,
    ClassGroup group,
    ExerciseVersion version,
    LocalDate plannedFor,
    HintStep hint,
    boolean lookFirst,
    Optional<Instant> opened,
    Optional<Instant> closed,
    Optional<Instant> released,
    long changes) {

  /** Where a session stands; a closed one can be opened again. */
  public enum State {
    PLANNED,
    OPEN,
    CLOSED
  }

  public State state() {
    if (opened.isEmpty()) {
      return State.PLANNED;
    }
    return closed.isPresent() ? State.CLOSED : State.OPEN;
  }

  public boolean isOpen() {
    return state() == State.OPEN;
  }

  public Exercise exercise() {
    return version.exercise();
  }
}
