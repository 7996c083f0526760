package org.holewise.school.sheet;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.holewise.engine.board.Hole;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** An entry of a document; a member that is not there is empty, zero or false. */
record Entry(JsonNode node) {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  static Entry read(String document) {
    try {
      JsonNode root = JSON.readTree(document);
      if (root.isObject()) {
        return new Entry(root);
      }
      throw new IllegalArgumentException("no object: " + root.getNodeType());
    } catch (JacksonException e) {
      throw new IllegalArgumentException("no document", e);
    }
  }

  boolean has(String field) {
    return node.hasNonNull(field);
  }

  Entry in(String field) {
    return new Entry(node.path(field));
  }

  Optional<Entry> find(String field) {
    return has(field) ? Optional.of(in(field)) : Optional.empty();
  }

  <T> List<T> all(String field, Function<Entry, T> reading) {
    return in(field).node.valueStream().map(Entry::new).map(reading).toList();
  }

  boolean isNumber() {
    return node.isNumber();
  }

  String text() {
    return node.asString("");
  }

  String text(String field) {
    return in(field).text();
  }

  String text(String field, int at) {
    return new Entry(node.path(field).path(at)).text();
  }

  Optional<String> word(String field) {
    return find(field).map(Entry::text);
  }

  double number() {
    return node.asDouble(0);
  }

  double number(String field) {
    return in(field).number();
  }

  double number(String field, int at) {
    return new Entry(node.path(field).path(at)).number();
  }

  Optional<Integer> whole(String field) {
    return find(field).map(found -> found.node.asInt(0));
  }

  boolean flag(String field) {
    return node.path(field).asBoolean(false);
  }

  /** A hole, or a list of them. */
  List<Hole> holes() {
    var written = node.isArray() ? node.valueStream() : java.util.stream.Stream.of(node);
    return written.flatMap(hole -> Hole.read(hole.asString("")).stream()).toList();
  }

  List<Hole> holes(String field) {
    return in(field).holes();
  }
}
