package org.holewise.document;

import java.util.Optional;
import org.holewise.document.shape.Place;
import org.holewise.document.shape.Shape;
import org.holewise.engine.exercise.Written;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A reading as it was written down: a text, or a number in SI units. */
record WrittenShape(int most) implements Shape<Written> {

  @Override
  public Optional<Written> read(Place place) {
    if (place.node().isNumber()) {
      return Optional.of(Written.number(place.node().doubleValue()));
    }
    if (!place.node().isString()) {
      return place.wrong("not-a-reading");
    }
    String text = place.node().stringValue();
    return text.codePointCount(0, text.length()) <= most
        ? Optional.of(Written.text(text))
        : place.wrong("too-long", most);
  }

  @Override
  public ObjectNode schema() {
    var schema = JsonNodeFactory.instance.objectNode().put("maxLength", most);
    schema.putArray("type").add("number").add("string");
    return schema;
  }
}
