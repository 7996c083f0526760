package org.holewise.document;

import org.holewise.document.shape.DocumentTree;
import org.holewise.document.shape.Read;

/** Reads an exercise document, JSON or YAML; pointers begin at its root. */
public final class ExerciseDocument {
  private ExerciseDocument() {}

  public static Read<PreparedExercise> json(byte[] document) {
    return DocumentTree.json(document).read(ExerciseReader::read);
  }

  public static Read<PreparedExercise> yaml(String document) {
    return DocumentTree.yaml(document).read(ExerciseReader::read);
  }
}
