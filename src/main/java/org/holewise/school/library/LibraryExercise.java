package org.holewise.school.library;

import java.util.List;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;

/**
 * An exercise of the library. Immutable.
 *
 * @param notes teaching notes
 * @param document its text as it was written
 * @param checked a sound build of it, with readings
 */
public record LibraryExercise(
    Exercise exercise, List<String> notes, String document, BenchRecord checked) {}
