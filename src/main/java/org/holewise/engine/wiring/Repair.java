package org.holewise.engine.wiring;

import java.util.List;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.part.Pin;

/** One act that brings a build closer to the schematic; each costs 1. */
public sealed interface Repair {

  /**
   * A lead moved.
   *
   * @param from where it is now; empty where it has no hole yet
   * @param net name of the wanted net it belongs to, empty where it should touch nothing
   * @param joins name of the wanted net that its strip belongs to now, empty where it touches none
   * @param to free holes where it would be right, nearest first
   * @param slip what sort of slip it looks like
   */
  record MoveLead(
      Pin pin, java.util.Optional<Hole> from, String net, String joins, List<Hole> to, Slip slip)
      implements Repair {}

  /** End 0 or 1 of a link moved; fields as for a lead. */
  record MoveLinkEnd(
      int link, int end, Hole from, String net, String joins, List<Hole> to, Slip slip)
      implements Repair {}

  /** A link added from any hole of the first list to any of the second. */
  record AddLink(List<Hole> from, List<Hole> to, String net, boolean acrossGap) implements Repair {}

  record RemoveLink(int link, Link where, String joins, String and) implements Repair {}

  record PlacePart(String ref) implements Repair {}

  /** What a lead in a wrong hole looks like; each has its own sentence. */
  enum Slip {
    /** Both leads of the part in one strip. */
    SAME_STRIP,
    /** A column to the left or right of a right hole. */
    COLUMN_OFF,
    /** In the right column on the other side of the groove. */
    ACROSS_GROOVE,
    /** On the other rail of the pair. */
    OTHER_RAIL,
    /** On the right rail, beyond its gap. */
    PAST_GAP,
    /** Anything else. */
    ELSEWHERE
  }
}
