package org.holewise.document;

import org.holewise.document.shape.DocumentTree;
import org.holewise.document.shape.Read;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;

/** Reads a build document, JSON or YAML, for an exercise; pointers begin at its root. */
public final class BuildDocument {
  private BuildDocument() {}

  public static Read<BenchRecord> json(byte[] document, Exercise exercise) {
    return DocumentTree.json(document).read(place -> BuildReader.read(place, exercise));
  }

  public static Read<BenchRecord> yaml(String document, Exercise exercise) {
    return DocumentTree.yaml(document).read(place -> BuildReader.read(place, exercise));
  }
}
