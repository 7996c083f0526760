package org.holewise.engine.wiring;

import java.util.Collection;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Hole;
import org.holewise.engine.wiring.Repair.Slip;

/**
 * What a lead in a wrong hole looks like, from where it is and the strips where it would be right.
 */
record Slips(BoardModel board, Collection<Integer> right) {

  /** The sort of slip; {@code shorted}: the part's other lead is in the same strip. */
  Slip of(Hole from, boolean shorted) {
    if (shorted) {
      return Slip.SAME_STRIP;
    }
    return from.rail() ? inRail(from) : inColumn(from);
  }

  private Slip inColumn(Hole from) {
    if (is(from, side(from), -1) || is(from, side(from), 1)) {
      return Slip.COLUMN_OFF;
    }
    return is(from, 1 - side(from), 0) ? Slip.ACROSS_GROOVE : Slip.ELSEWHERE;
  }

  private boolean is(Hole from, int side, int columns) {
    int column = from.column() + columns;
    if (column < 1 || column > board.columns()) {
      return false;
    }
    Hole there = new Hole(from.board(), side == 0 ? "a" : "f", column);
    return right.contains(board.stripOrNone(there));
  }

  private static int side(Hole hole) {
    return hole.track().compareTo("f") < 0 ? 0 : 1;
  }

  private Slip inRail(Hole from) {
    String pair = (from.track().charAt(0) == '+' ? "-" : "+") + from.track().charAt(1);
    if (touches(from.board(), pair)) {
      return Slip.OTHER_RAIL;
    }
    return touches(from.board(), from.track()) ? Slip.PAST_GAP : Slip.ELSEWHERE;
  }

  private boolean touches(int onBoard, String track) {
    return right.stream()
        .anyMatch(
            strip ->
                board.board(strip) == onBoard
                    && board.rail(strip).filter(rail -> rail.track().equals(track)).isPresent());
  }
}
