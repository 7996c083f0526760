package org.holewise.document;

import java.util.List;
import org.holewise.document.shape.Problem;
import org.holewise.document.text.Messages;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes what is wrong with a request as a problem document (RFC 9457). */
public final class ProblemDocument {
  public static final int STATUS = 400;

  private ProblemDocument() {}

  /** The document, with every wrong place under {@code errors}. */
  public static ObjectNode tree(List<Problem> problems, Messages messages) {
    var document =
        JsonNodeFactory.instance
            .objectNode()
            .put("title", messages.say("malformed.title"))
            .put("status", STATUS)
            .put("detail", messages.say("malformed.detail", problems.size()));
    var errors = document.putArray("errors");
    for (Problem problem : problems) {
      errors.addObject().put("at", problem.at()).put("text", problem.text(messages));
    }
    return document;
  }
}
