package org.holewise.drawing.place;

import java.util.List;
import org.holewise.drawing.place.Element.Lie;
import org.holewise.drawing.symbol.Turn;

/** Sets items beside each other in their order, as near as bodies, texts and wires allow. */
final class Spacing {
  private static final int MARGIN = 10;

  private final List<Item> order;
  private final int gap;

  /**
   * Sets them.
   *
   * @param gap room for upright wires between neighbours (px)
   */
  Spacing(List<Item> order, int gap) {
    this.order = order;
    this.gap = gap;
    for (int i = 0; i < order.size(); i++) {
      place(i);
    }
    order.forEach(this::pieces);
    order.forEach(this::face);
  }

  private void place(int at) {
    Item item = order.get(at);
    item.x = 0;
    for (int j = 0; j < at; j++) {
      int distance = distance(order.get(j), item);
      if (distance > 0) {
        item.x = Math.max(item.x, order.get(j).x + distance);
      }
    }
    item.x = (item.x + 9) / 10 * 10;
  }

  /** Between the middles of two neighbours; 0 where they may stand anyhow. */
  private int distance(Item one, Item other) {
    int distance = joined(one, other) ? side(one, true) + gap + side(other, false) : 0;
    for (Item.Bar a : one.bars) {
      for (Item.Bar b : other.bars) {
        int margin = a.body() && b.body() && !(lies(one) && lies(other)) ? MARGIN : 0;
        if (a.from() < b.to() + margin && b.from() < a.to() + margin) {
          distance = Math.max(distance, a.right() + gap + b.left());
        }
      }
    }
    return distance;
  }

  private static boolean lies(Item item) {
    return item.elements.get(0).lies(Lie.LEVEL) || item.elements.get(0).lies(Lie.ROW);
  }

  private static boolean joined(Item one, Item other) {
    return one.taps.stream().anyMatch(tap -> other.touches(tap.net()));
  }

  /** How far level pieces reach to a side; what stands has its net in its middle. */
  private static int side(Item item, boolean right) {
    if (item.elements.get(0).lies(Lie.UPRIGHT)) {
      return 0;
    }
    return item.bars.stream()
        .filter(Item.Bar::body)
        .mapToInt(bar -> right ? bar.right() : bar.left())
        .max()
        .orElse(0);
  }

  private void pieces(Item item) {
    for (Element element : item.elements) {
      int n = element.pieces().size();
      int start = item.x - (n - 1) * Heights.ROW / 2;
      for (int i = 0; i < n; i++) {
        element.pieces().get(i).x =
            element.lies(Lie.LEVEL) || element.lies(Lie.ROW) ? start + i * Heights.ROW : item.x;
      }
    }
  }

  /** Turns transistors so that the base is where its net comes from, and level pieces their way. */
  private void face(Item item) {
    for (Element element : item.elements) {
      Piece piece = element.first();
      if (element.channel() && piece.net(1) != Nets.NONE) {
        double mean = mean(piece.net(1), item);
        boolean right = mean > item.x;
        boolean flipped = piece.turn().equals(Turn.FLIPPED) || piece.turn().equals(Turn.HALF);
        piece.turn(
            right ? flipped ? Turn.HALF : Turn.MIRRORED : flipped ? Turn.FLIPPED : Turn.NONE);
      } else if (element.lies(Lie.LEVEL)
          && nearest(element.from(), item) > nearest(element.to(), item)) {
        turnBack(element);
      }
    }
  }

  private static void turnBack(Element element) {
    int n = element.pieces().size();
    for (int i = 0; i < n; i++) {
      Piece piece = element.pieces().get(i);
      piece.turn(new Turn(0, !piece.turn().mirror()));
      if (i < n / 2) {
        Piece other = element.pieces().get(n - 1 - i);
        int x = piece.x;
        piece.x = other.x;
        other.x = x;
      }
    }
  }

  /** How far to the right the nearest other item on a net is. */
  private int nearest(int net, Item item) {
    return order.stream()
        .filter(other -> other != item && other.touches(net))
        .map(other -> other.x - item.x)
        .reduce((a, b) -> Math.abs(b) < Math.abs(a) ? b : a)
        .orElse(0);
  }

  /** Where the other items on a net are on average; the item itself where there are none. */
  private double mean(int net, Item item) {
    return order.stream()
        .filter(other -> other != item)
        .flatMap(other -> other.taps.stream().filter(tap -> tap.net() == net).map(tap -> other.x))
        .mapToInt(Integer::intValue)
        .average()
        .orElse(item.x);
  }
}
