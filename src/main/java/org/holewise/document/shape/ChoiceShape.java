package org.holewise.document.shape;

import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * One of a few words.
 *
 * @param otherwise kind of the problem for another word; its parts are the word and the options
 */
public record ChoiceShape(List<String> options, String otherwise) implements Shape<String> {

  public ChoiceShape(List<String> options) {
    this(options, "not-a-choice");
  }

  @Override
  public Optional<String> read(Place place) {
    if (!place.node().isString()) {
      return place.wrong("not-text");
    }
    String word = place.node().stringValue();
    return options.contains(word)
        ? Optional.of(word)
        : place.wrong(otherwise, Excerpt.of(word), String.join(", ", options));
  }

  @Override
  public ObjectNode schema() {
    return Schemas.put(JsonNodeFactory.instance.objectNode(), "enum", options);
  }
}
