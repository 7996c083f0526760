package org.holewise.document.shape;

import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Builds a tree from tokens. Unlike the library's own reader it goes on after a name that stands
 * twice, so that every wrong place is named at once; the first value of such a name counts.
 */
final class TreeReader {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final JsonParser parser;
  private final Problems problems;

  TreeReader(JsonParser parser, Problems problems) {
    this.parser = parser;
    this.problems = problems;
  }

  /** The only value of the document. */
  JsonNode document() {
    if (parser.nextToken() == null) {
      throw new StreamReadException(parser, "nothing here");
    }
    JsonNode root = value("");
    if (parser.nextToken() != null) {
      throw new StreamReadException(parser, "more than one value");
    }
    return root;
  }

  private JsonNode value(String at) {
    JsonToken token = parser.currentToken();
    return switch (token) {
      case START_OBJECT -> object(at);
      case START_ARRAY -> array(at);
      case VALUE_STRING -> text(at);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(at);
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      case VALUE_NULL -> NODES.nullNode();
      default -> throw new StreamReadException(parser, "no value");
    };
  }

  private JsonNode object(String at) {
    var object = NODES.objectNode();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = checked(parser.currentName(), at);
      String child = Place.pointer(at, name);
      parser.nextToken();
      JsonNode value = value(child);
      if (object.has(name)) {
        problems.add(Problem.of(child, "name-twice", Excerpt.of(name)));
      } else {
        object.set(name, value);
      }
    }
    return object;
  }

  private JsonNode array(String at) {
    var array = NODES.arrayNode();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      array.add(value(at + "/" + array.size()));
    }
    return array;
  }

  private JsonNode text(String at) {
    if (parser instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
      problems.add(Problem.of(at, "alias"));
    }
    return NODES.stringNode(checked(parser.getString(), at));
  }

  private JsonNode number(String at) {
    double value = parser.getDoubleValue();
    if (!Double.isFinite(value)) {
      problems.add(Problem.of(at, "no-number"));
      return NODES.numberNode(0.0);
    }
    return NODES.numberNode(value);
  }

  /** Half of a surrogate pair cannot be written again, and a zero cannot be stored. */
  private String checked(String text, String at) {
    int[] marked = text.codePoints().map(c -> unwritable(c) ? '\uFFFD' : c).toArray();
    String clean = new String(marked, 0, marked.length);
    if (!clean.equals(text)) {
      problems.add(Problem.of(at, "no-unicode"));
    }
    return clean;
  }

  private static boolean unwritable(int codePoint) {
    boolean half = codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
    return half || codePoint == 0;
  }
}
