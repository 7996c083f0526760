package org.holewise.school.library;

import java.util.List;
import java.util.Optional;

/** Where exercises are found by their slug. */
public interface Library {

  /** All exercises, in the order of their slugs. */
  List<LibraryExercise> exercises();

  default Optional<LibraryExercise> find(String slug) {
    return exercises().stream().filter(entry -> entry.exercise().slug().equals(slug)).findFirst();
  }
}
