package org.holewise.drawing.place;

import java.util.List;
import org.holewise.drawing.symbol.Form.Manner;

/**
 * Pieces in one line between two nets.
 *
 * @param from upper or left net, none where it hangs free
 * @param to lower or right net
 * @param pieces from {@code from} to {@code to}
 */
record Element(Lie lie, int from, int to, List<Piece> pieces) {

  /** How it lies. */
  enum Lie {
    UPRIGHT,
    LEVEL,
    /** Level from a chip's pin to a rail. */
    ROW,
    BLOCK
  }

  Piece first() {
    return pieces.get(0);
  }

  Piece last() {
    return pieces.get(pieces.size() - 1);
  }

  boolean lies(Lie other) {
    return lie == other;
  }

  /** A current's way through a transistor or potentiometer. */
  boolean channel() {
    return first().manner(Manner.CHANNEL);
  }

  Element as(Lie other) {
    return new Element(other, from, to, pieces);
  }
}
