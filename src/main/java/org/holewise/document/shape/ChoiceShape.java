package org.holewise.document.shape;

import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
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
    Optional<String> word = word(place.node());
    if (word.isEmpty()) {
      return place.wrong("not-text");
    }
    return word.filter(options::contains).isPresent()
        ? word
        : place.wrong(otherwise, Excerpt.of(word.get()), String.join(", ", options));
  }

  /** A whole number stands for its figures where they are one of the words. */
  private Optional<String> word(JsonNode node) {
    if (node.isString()) {
      return Optional.of(node.stringValue());
    }
    return node.isNumber() && node.canConvertToExactIntegral() && node.canConvertToInt()
        ? Optional.of(Integer.toString(node.intValue())).filter(options::contains)
        : Optional.empty();
  }

  @Override
  public ObjectNode schema() {
    var schema = Schemas.put(JsonNodeFactory.instance.objectNode(), "enum", options);
    options.stream()
        .filter(option -> option.matches("[0-9]{1,9}"))
        .forEach(option -> schema.withArray("enum").add(Integer.parseInt(option)));
    return schema;
  }
}
