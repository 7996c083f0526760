package org.holewise.engine.wiring;

import java.util.List;
import java.util.Optional;
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
  record MoveLead(Pin pin, Optional<Hole> from, String net, String joins, List<Hole> to, Slip slip)
      implements Repair {}

  /** End 0 or 1 of a link moved; fields as for a lead. */
  record MoveLinkEnd(
      int link, int end, Hole from, String net, String joins, List<Hole> to, Slip slip)
      implements Repair {}

  /** A link added from any hole of the first list to any of the second. */
  record AddLink(List<Hole> from, List<Hole> to, String net, boolean acrossGap) implements Repair {}

  record RemoveLink(int link, Link where, String joins, String and) implements Repair {}

  /**
   * A part placed, or a chip taken out and put in anew.
   *
   * @param anew empty for a part that is not on the board yet
   */
  record PlacePart(String ref, Optional<Reseat> anew) implements Repair {
    public PlacePart(String ref) {
      this(ref, Optional.empty());
    }
  }

  /**
   * How a chip is put in anew.
   *
   * @param from the hole of its first pin now
   * @param to where that belongs
   * @param turned whether it was turned round
   * @param columns how many columns up its first pin goes; 0 where it was not across the groove
   */
  record Reseat(Hole from, Hole to, boolean turned, int columns) {}

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
