package org.holewise.document.shape;

import java.util.Arrays;
import java.util.List;
import org.holewise.document.text.Messages;

/**
 * One wrong place in a document. Immutable.
 *
 * @param at JSON pointer (RFC 6901) from the root of the request; for something missing, to where
 *     it should be
 * @param kind key of its sentence, without the leading {@code problem.}
 * @param parts what the sentence names, in its order
 */
public record Problem(String at, String kind, List<String> parts) {

  public static Problem of(String at, String kind, Object... parts) {
    return new Problem(at, kind, Arrays.stream(parts).map(String::valueOf).toList());
  }

  /** What is wrong and what to do, in English. */
  public String text() {
    return text(Messages.english());
  }

  public String text(Messages messages) {
    return messages.say("problem." + kind, parts.toArray());
  }

  /** The same problem seen from a document that begins further down. */
  Problem below(String prefix) {
    return new Problem(at.substring(prefix.length()), kind, parts);
  }
}
