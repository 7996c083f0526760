package org.holewise.document;

import org.holewise.document.shape.DocumentTree;
import org.holewise.document.shape.Read;
import org.holewise.document.shape.Read.Malformed;
import org.holewise.document.shape.Read.Ok;

/** Reads an exercise document, JSON or YAML; pointers begin at its root. */
public final class ExerciseDocument {
  private ExerciseDocument() {}

  public static Read<PreparedExercise> json(byte[] document) {
    return read(DocumentTree.json(document));
  }

  public static Read<PreparedExercise> yaml(String document) {
    return read(DocumentTree.yaml(document));
  }

  private static Read<PreparedExercise> read(DocumentTree tree) {
    if (!tree.readable()) {
      return new Malformed<>(tree.problems());
    }
    var place = tree.place();
    var read = ExerciseReader.read(place);
    return place.problems().isEmpty()
        ? new Ok<>(read.orElseThrow())
        : new Malformed<>(place.problems());
  }
}
