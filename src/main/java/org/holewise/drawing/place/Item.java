package org.holewise.drawing.place;

import java.util.ArrayList;
import java.util.List;

/**
 * What moves from left to right as one: a column, a block with what hangs over it, or level pieces.
 */
final class Item {

  /** A net that the item touches, at a height; {@code side} −1 left, 1 right, 0 either. */
  record Tap(int net, int y, int side) {}

  /**
   * What a level wire cannot pass, or passes as a crossing.
   *
   * @param left how far it reaches from the item's middle, its texts included
   */
  record Bar(int from, int to, boolean body, int left, int right) {}

  final List<Element> elements = new ArrayList<>();
  final List<Tap> taps = new ArrayList<>();
  final List<Bar> bars = new ArrayList<>();
  double key;
  int x;

  boolean touches(int net) {
    for (Tap tap : taps) {
      if (tap.net() == net) {
        return true;
      }
    }
    return false;
  }

  /** What it costs a wire at that height to pass. */
  int passing(int y) {
    int cost = 0;
    for (Bar bar : bars) {
      if (y >= bar.from() && y <= bar.to()) {
        cost = Math.max(cost, bar.body() ? 60 : 25);
      }
    }
    return cost;
  }
}
