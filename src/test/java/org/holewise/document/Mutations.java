package org.holewise.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Changes documents at random places, the same ones for the same seed. */
final class Mutations {
  private static final List<String> VALUES =
      List.of(
          "null",
          "true",
          "false",
          "0",
          "-1",
          "5",
          "1e15",
          "2.5",
          "\"\"",
          "\" \"",
          "\"z99\"",
          "\"e12\"",
          "\"+j12\"",
          "\"R1\"",
          "\"R1.1\"",
          "\"4k7\"",
          "\"9.9 MA\"",
          "\"resistor\"",
          "\"unknown\"",
          "\"" + "long ".repeat(60) + "\"",
          "\"\\u0007\"",
          "{}",
          "[]",
          "[1, 2]",
          "{\"a\": 1}",
          "[\"R1.1\", \"R1.2\"]",
          "{\"ref\": \"R1\"}");

  private final Random random;

  Mutations(long seed) {
    this.random = new Random(seed);
  }

  /** A copy with one to four changes. */
  JsonNode change(JsonNode document) {
    JsonNode changed = document.deepCopy();
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes && changed.isContainer(); i++) {
      changeOnce(changed);
    }
    return changed;
  }

  /** The bytes of a document with some of them overwritten, cut off or doubled. */
  byte[] spoil(byte[] document) {
    var spoilt = new java.io.ByteArrayOutputStream();
    int at = random.nextInt(document.length);
    int length = random.nextInt(20);
    spoilt.write(document, 0, at);
    switch (random.nextInt(3)) {
      case 0 -> spoilt.write(random.nextInt(256));
      case 1 -> spoilt.write(document, at, Math.min(length, document.length - at));
      default -> at = Math.min(at + length, document.length);
    }
    spoilt.write(document, at, document.length - at);
    return spoilt.toByteArray();
  }

  private void changeOnce(JsonNode root) {
    List<JsonPointer> places = new ArrayList<>();
    collect(root, JsonPointer.empty(), places);
    if (places.isEmpty()) {
      return;
    }
    JsonPointer place = places.get(random.nextInt(places.size()));
    JsonNode parent = root.at(place.head());
    if (parent instanceof ObjectNode object) {
      changeMember(object, place.last().getMatchingProperty(), root);
    } else {
      changeElement((ArrayNode) parent, place.last().getMatchingIndex(), root);
    }
  }

  private void changeMember(ObjectNode object, String name, JsonNode root) {
    switch (random.nextInt(5)) {
      case 0 -> object.remove(name);
      case 1 -> object.set(name + "x", object.remove(name));
      case 2 -> object.set("surprise", value());
      case 3 -> object.set(name, elsewhere(root));
      default -> object.set(name, value());
    }
  }

  private void changeElement(ArrayNode list, int index, JsonNode root) {
    switch (random.nextInt(5)) {
      case 0 -> list.remove(index);
      case 1 -> list.add(list.get(index).deepCopy());
      case 2 -> list.insert(index, value());
      case 3 -> list.set(index, elsewhere(root));
      default -> list.set(index, value());
    }
  }

  private JsonNode value() {
    return Edited.JSON.readTree(VALUES.get(random.nextInt(VALUES.size())));
  }

  private JsonNode elsewhere(JsonNode root) {
    List<JsonPointer> places = new ArrayList<>();
    collect(root, JsonPointer.empty(), places);
    return root.at(places.get(random.nextInt(places.size()))).deepCopy();
  }

  private static void collect(JsonNode node, JsonPointer at, List<JsonPointer> places) {
    if (node.isObject()) {
      for (String name : node.propertyNames()) {
        JsonPointer child = at.appendProperty(name);
        places.add(child);
        collect(node.get(name), child, places);
      }
    } else {
      for (int i = 0; i < node.size(); i++) {
        JsonPointer child = at.appendIndex(i);
        places.add(child);
        collect(node.get(i), child, places);
      }
    }
  }
}
