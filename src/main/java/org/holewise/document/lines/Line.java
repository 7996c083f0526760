package org.holewise.document.lines;

import java.util.List;
import java.util.Optional;
import org.holewise.document.text.Messages;

/**
 * A line as it was typed, and what is wrong with it. Immutable.
 *
 * @param number from 1
 */
public record Line(int number, String text, Optional<Problem> problem) {

  /**
   * Why a line cannot be used.
   *
   * @param kind key of its sentence, without the leading {@code line.}
   * @param parts what the sentence names, in its order
   */
  public record Problem(String kind, List<String> parts) {

    /** What is wrong and what to do. */
    public String text(Messages messages) {
      return messages.say("line." + kind, parts.toArray());
    }
  }
}
