package org.holewise.engine.board;

import java.util.Map;
import java.util.Optional;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Part;

/**
 * A part where the student put it. Immutable.
 *
 * @param holes by pin name, in the order written; of a chip that was placed by {@code pin1} those
 *     in which its pins come to lie
 * @param pin1 where a chip's first pin sits, when given instead of its holes
 * @param marked what was read off the part
 */
public record Placed(
    String ref, Map<String, Hole> holes, Optional<Hole> pin1, Optional<String> marked) {

  public Optional<Hole> hole(String pin) {
    return Optional.ofNullable(holes.get(pin));
  }

  /** The same with the holes of a chip that was placed by its first pin; else as it is. */
  public Placed seated(Part part) {
    return pin1.isPresent()
            && holes.isEmpty()
            && part.kind().footprint(part.fields()) instanceof Footprint.Dip chip
        ? new Placed(
            ref, Seat.of(pin1.get(), chip).holes(part.kind().pins(part.fields())), pin1, marked)
        : this;
  }

  /** How a chip sits; empty for other parts, and where its holes are none that it reaches. */
  public Optional<Seat> seat(Part part) {
    if (!(part.kind().footprint(part.fields()) instanceof Footprint.Dip chip)) {
      return Optional.empty();
    }
    return pin1.map(first -> Seat.of(first, chip))
        .or(() -> Seat.of(holes, part.kind().pins(part.fields()), chip));
  }
}
