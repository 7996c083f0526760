package org.holewise.document;

import java.util.Optional;
import org.holewise.engine.exercise.Seat;
import org.holewise.engine.part.Part;

/**
 * What could be read of a part.
 *
 * @param at JSON pointer to it
 * @param part only where nothing about it was wrong
 * @param seat where its author wants it in the schematic's drawing
 */
record DeclaredPart(String at, Optional<String> ref, Optional<Part> part, Optional<Seat> seat) {

  DeclaredPart(String at, Optional<String> ref) {
    this(at, ref, Optional.empty(), Optional.empty());
  }
}
