package org.holewise.document;

import java.util.List;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A document that is changed at places, for tests. */
final class Edited {
  static final JsonMapper JSON = JsonMapper.builder().build();

  private final JsonNode root;

  private Edited(JsonNode root) {
    this.root = root;
  }

  static Edited of(String json) {
    return new Edited(JSON.readTree(json));
  }

  static Edited of(JsonNode tree) {
    return new Edited(tree.deepCopy());
  }

  /** Puts a value, given as JSON, at a pointer; at the end of a list for an index beyond it. */
  Edited put(String at, String json) {
    JsonPointer pointer = JsonPointer.compile(at);
    JsonNode parent = root.at(pointer.head());
    JsonNode value = JSON.readTree(json);
    String last = pointer.last().getMatchingProperty();
    if (parent instanceof ObjectNode object) {
      object.set(last, value);
    } else {
      var list = (ArrayNode) parent;
      int index = Integer.parseInt(last);
      if (index < list.size()) {
        list.set(index, value);
      } else {
        list.add(value);
      }
    }
    return this;
  }

  Edited remove(String at) {
    JsonPointer pointer = JsonPointer.compile(at);
    JsonNode parent = root.at(pointer.head());
    String last = pointer.last().getMatchingProperty();
    if (parent instanceof ObjectNode object) {
      object.remove(last);
    } else {
      ((ArrayNode) parent).remove(Integer.parseInt(last));
    }
    return this;
  }

  JsonNode tree() {
    return root;
  }

  byte[] bytes() {
    return JSON.writeValueAsBytes(root);
  }

  static List<String> names(JsonNode node) {
    return List.copyOf(node.propertyNames());
  }
}
