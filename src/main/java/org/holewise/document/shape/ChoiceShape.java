package org.holewise.document.shape;

import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * One of a few words; one that is a figure may be written as a number.
 *
 * @param otherwise kind of the problem for another word; its parts are the word and the options
 */
public record ChoiceShape(List<String> options, String otherwise) implements Shape<String> {

  public ChoiceShape(List<String> options) {
    this(options, "not-a-choice");
  }

  @Override
  public Optional<String> read(Place place) {
    boolean number = place.node().isIntegralNumber();
    if (!place.node().isString() && !(number && options.contains(place.node().asString()))) {
      return place.wrong("not-text");
    }
    String word = place.node().asString();
    return options.contains(word)
        ? Optional.of(word)
        : place.wrong(otherwise, Excerpt.of(word), String.join(", ", options));
  }

  @Override
  public ObjectNode schema() {
    var schema = Schemas.put(JsonNodeFactory.instance.objectNode(), "enum", options);
    options.stream()
        .filter(option -> option.matches("[0-9]"))
        .forEach(option -> schema.withArray("enum").add(Integer.parseInt(option)));
    return schema;
  }
}
