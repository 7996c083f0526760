package org.holewise.document;

import java.util.List;
import org.holewise.engine.exercise.Exercise;

/**
 * An exercise as a document holds it: what is marked, and the teaching notes beside it. Immutable.
 */
public record PreparedExercise(Exercise exercise, List<String> notes) {
  public PreparedExercise {
    notes = List.copyOf(notes);
  }
}
