package org.holewise.school.library;

import java.util.List;
import org.holewise.engine.exercise.Exercise;

/**
 * An exercise as it was when a session was planned with it. Immutable.
 *
 * @param notes teaching notes, not for students
 */
public record ExerciseVersion(long id, Exercise exercise, List<String> notes) {}
