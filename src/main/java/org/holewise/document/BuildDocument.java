package org.holewise.document;

import org.holewise.document.shape.DocumentTree;
import org.holewise.document.shape.Read;
import org.holewise.document.shape.Read.Malformed;
import org.holewise.document.shape.Read.Ok;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;

/** Reads a build document (JSON) for an exercise; pointers begin at its root. */
public final class BuildDocument {
  private BuildDocument() {}

  public static Read<BenchRecord> json(byte[] document, Exercise exercise) {
    var tree = DocumentTree.json(document);
    if (!tree.readable()) {
      return new Malformed<>(tree.problems());
    }
    var place = tree.place();
    var read = BuildReader.read(place, exercise);
    return place.problems().isEmpty()
        ? new Ok<>(read.orElseThrow())
        : new Malformed<>(place.problems());
  }
}
