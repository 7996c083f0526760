package org.holewise.document;

import java.util.List;
import java.util.Optional;
import org.holewise.document.shape.RecordShape;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The published schema of a document (JSON Schema, draft 2020-12), made from what reads it.
 * Immutable.
 */
public final class DocumentSchema {
  private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";
  private static final List<DocumentSchema> ALL =
      List.of(
          new DocumentSchema("exercise", ExerciseShape.WHOLE, "An exercise"),
          new DocumentSchema("build", BuildShape.WHOLE, "A build with its readings"),
          new DocumentSchema("mark", MarkShape.WHOLE, "A mark, in the teacher's view"));

  private final String name;
  private final RecordShape shape;
  private final String title;

  private DocumentSchema(String name, RecordShape shape, String title) {
    this.name = name;
    this.shape = shape;
    this.title = title;
  }

  /** The schema of {@code exercise}, {@code build} or {@code mark}. */
  public static Optional<DocumentSchema> named(String name) {
    return ALL.stream().filter(schema -> schema.name.equals(name)).findFirst();
  }

  /** The schema as a tree; a new one each time. */
  public ObjectNode tree() {
    var schema = JsonNodeFactory.instance.objectNode().put("$schema", DIALECT).put("title", title);
    schema.setAll(shape.schema());
    return schema;
  }

  /** The schema as it goes out (UTF-8). */
  public byte[] bytes() {
    return MarkDocument.bytes(tree());
  }
}
