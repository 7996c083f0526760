package org.holewise.document.shape;

import java.util.Optional;
import java.util.function.Predicate;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Something whose shape depends on what stands elsewhere: the place is kept, to be read later.
 *
 * @param schema what is known of it
 */
public record AnyShape(Predicate<JsonNode> suits, String otherwise, ObjectNode schema)
    implements Shape<Place> {

  /** An object. */
  public static AnyShape object() {
    return new AnyShape(JsonNode::isObject, "not-object", Schemas.ofType("object"));
  }

  /** Any number. */
  public static AnyShape number() {
    return new AnyShape(JsonNode::isNumber, "not-number", Schemas.ofType("number"));
  }

  /** Any text. */
  public static AnyShape text() {
    return new AnyShape(JsonNode::isString, "not-text", Schemas.ofType("string"));
  }

  /** A number or a text of at most 40 characters. */
  public static AnyShape quantity() {
    return new AnyShape(
        node -> node.isNumber() || (node.isString() && brief(node.stringValue())),
        "not-quantity",
        Schemas.ofType("number", "string").put("maxLength", 40));
  }

  private static boolean brief(String text) {
    return text.codePointCount(0, text.length()) <= 40;
  }

  @Override
  public Optional<Place> read(Place place) {
    return suits.test(place.node()) ? Optional.of(place) : place.wrong(otherwise, "");
  }

  @Override
  public ObjectNode schema() {
    return schema.deepCopy();
  }
}
