package org.holewise.document.shape;

import java.util.Collection;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Small pieces of JSON Schema. */
final class Schemas {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private Schemas() {}

  static ObjectNode ofType(String... types) {
    var schema = NODES.objectNode();
    return types.length == 1 ? schema.put("type", types[0]) : put(schema, "type", types);
  }

  static ObjectNode put(ObjectNode schema, String name, String... words) {
    ArrayNode list = schema.putArray(name);
    for (String word : words) {
      list.add(word);
    }
    return schema;
  }

  static ObjectNode put(ObjectNode schema, String name, Collection<String> words) {
    return put(schema, name, words.toArray(String[]::new));
  }

  /** Whole limits as whole numbers, so that they read as they were written. */
  static ObjectNode range(ObjectNode schema, double least, double most) {
    return limit(limit(schema, "minimum", least), "maximum", most);
  }

  private static ObjectNode limit(ObjectNode schema, String name, double value) {
    boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
    return whole ? schema.put(name, (long) value) : schema.put(name, value);
  }
}
