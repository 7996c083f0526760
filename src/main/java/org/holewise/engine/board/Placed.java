package org.holewise.engine.board;

import java.util.Map;
import java.util.Optional;

/**
 * A part where the student put it. Immutable.
 *
 * @param holes by pin name, in the order written; holes derived from {@code pin1} are not in it
 * @param pin1 where a chip's first pin sits, when given instead of its holes
 * @param marked what was read off the part
 */
public record Placed(
    String ref, Map<String, Hole> holes, Optional<Hole> pin1, Optional<String> marked) {

  public Optional<Hole> hole(String pin) {
    return Optional.ofNullable(holes.get(pin));
  }
}
