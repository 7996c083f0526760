package org.holewise.engine.diagnosis;

import org.holewise.engine.board.Hole;
import org.holewise.engine.part.Pin;

/** A place on the bench that can be at fault. */
public sealed interface Place {
  record Nowhere() implements Place {}

  record OfLead(Pin pin) implements Place {}

  record OfPart(String ref) implements Place {}

  /** Two parts that have traded places, in the order of the exercise. */
  record OfParts(String one, String other) implements Place {}

  record OfLink(int link) implements Place {}

  /** The rail {@code track} of a board. */
  record OfRail(int board, String track) implements Place {}

  record OfSupply(String ref) implements Place {}

  /** Two strips that touch, each named by one of its holes. */
  record OfStrips(Hole one, Hole other) implements Place {}

  record OfReading(String id) implements Place {}

  /** Two readings, each written down for the other, in the order of the exercise. */
  record OfReadings(String one, String other) implements Place {}
}
