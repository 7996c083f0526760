package org.holewise.document.shape;

import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * A place in a document that is being read.
 *
 * @param at JSON pointer to it
 * @param problems where to say what is wrong; shared by all places of a document
 */
public record Place(JsonNode node, String at, Problems problems) {

  /** The place of a member; its node is missing where the document has none of that name. */
  public Place child(String name) {
    return new Place(node.path(name), pointer(at, name), problems);
  }

  public Place child(int index) {
    return new Place(node.path(index), at + "/" + index, problems);
  }

  /** Says that this place is wrong; always empty, for the reader to give back. */
  public <T> Optional<T> wrong(String kind, Object... parts) {
    problems.add(Problem.of(at, kind, parts));
    return Optional.empty();
  }

  /** The pointer to a member of what {@code at} points to. */
  public static String pointer(String at, String name) {
    return at + "/" + name.replace("~", "~0").replace("/", "~1");
  }
}
