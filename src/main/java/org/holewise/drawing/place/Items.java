package org.holewise.drawing.place;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.drawing.place.Element.Lie;
import org.holewise.drawing.place.Item.Bar;
import org.holewise.drawing.place.Item.Tap;
import org.holewise.drawing.sheet.Area;

/** Gathers elements into items: columns of what stands on each other, blocks, level pieces. */
final class Items {
  private static final int LABEL_GAP = 12;
  private static final int MARGIN = 20;

  private final List<Element> elements;
  private final Rails rails;
  private final Flow flow;
  private final Heights heights;
  private final Map<Element, Piece> hats;
  private final List<Item> items = new ArrayList<>();
  private final Map<Element, Item> of = new LinkedHashMap<>();

  Items(List<Element> elements, Rails rails, Flow flow, Heights heights, Map<Element, Piece> hats) {
    this.elements = elements;
    this.rails = rails;
    this.flow = flow;
    this.heights = heights;
    this.hats = hats;
    columns();
    others();
    items.forEach(this::describe);
  }

  List<Item> items() {
    return items;
  }

  /** Channels first, so that what is over and under a transistor is in line with it. */
  private void columns() {
    List<Element> upright = elements.stream().filter(e -> e.lies(Lie.UPRIGHT)).toList();
    for (boolean channels : new boolean[] {true, false}) {
      for (Element element : upright) {
        if (element.channel() == channels && !of.containsKey(element)) {
          column(element, upright);
        }
      }
    }
  }

  private void column(Element first, List<Element> upright) {
    Item item = item(first);
    if (first.first().part().kind().source()) {
      return;
    }
    var up = first;
    for (var next = over(up, upright);
        next.filter(e -> clear(e, item)).isPresent();
        next = over(up, upright)) {
      up = next.get();
      put(up, item);
    }
    var down = first;
    for (var next = under(down, upright);
        next.filter(e -> clear(e, item)).isPresent();
        next = under(down, upright)) {
      down = next.get();
      put(down, item);
    }
  }

  private Optional<Element> over(Element element, List<Element> upright) {
    return match(element.from(), upright, true);
  }

  private Optional<Element> under(Element element, List<Element> upright) {
    return match(element.to(), upright, false);
  }

  /** The element over or under a net, where the net does not want it in the middle of several. */
  private Optional<Element> match(int net, List<Element> upright, boolean over) {
    if (net == Nets.NONE || rails.way(net) != 0) {
      return Optional.empty();
    }
    long opposite = upright.stream().filter(e -> (over ? e.from() : e.to()) == net).count();
    List<Element> all =
        upright.stream().filter(e -> (over ? e.to() : e.from()) == net && !source(e)).toList();
    List<Element> free = all.stream().filter(e -> !of.containsKey(e)).toList();
    if (free.isEmpty()
        || (all.size() == 1
            && opposite > 1
            && !free.get(0).channel()
            && pair(net, upright, over))) {
      return Optional.empty();
    }
    return free.stream().min((a, b) -> Integer.compare(worth(a), worth(b)));
  }

  private static int worth(Element e) {
    boolean coupling = e.first().kind("capacitor") || e.first().kind("electrolytic");
    return e.channel() ? 0 : coupling ? 2 : 1;
  }

  /** Two channels that share a net: what serves both stands between them. */
  private static boolean pair(int net, List<Element> upright, boolean over) {
    return upright.stream().filter(e -> (over ? e.from() : e.to()) == net && worth(e) < 2).count()
        > 1;
  }

  private static boolean source(Element element) {
    return element.first().part().kind().source();
  }

  /** Whether an element's heights leave it room beside what is in an item. */
  private static boolean clear(Element element, Item item) {
    for (Piece piece : element.pieces()) {
      Area its = Heights.reach(piece).moved(0, piece.y);
      for (Element other : item.elements) {
        for (Piece each : other.pieces()) {
          Area area = Heights.reach(each).moved(0, each.y);
          if (its.y() < area.bottom() + 10 && area.y() < its.bottom() + 10) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private Item item(Element element) {
    Item item = new Item();
    items.add(item);
    put(element, item);
    return item;
  }

  private void put(Element element, Item item) {
    item.elements.add(element);
    of.put(element, item);
  }

  private void others() {
    for (Element element : elements) {
      if (element.lies(Lie.BLOCK)) {
        item(element);
      }
    }
    var pairs = new LinkedHashMap<String, Item>();
    for (Element element : elements) {
      if (hats.containsKey(element)) {
        Piece block = hats.get(element);
        items.stream()
            .filter(item -> item.elements.get(0).first() == block && clear(element, item))
            .findFirst()
            .ifPresentOrElse(item -> put(element, item), () -> item(element));
      } else if (element.lies(Lie.LEVEL)) {
        String pair =
            Math.min(element.from(), element.to()) + " " + Math.max(element.from(), element.to());
        Item same = pairs.get(pair);
        if (same == null || !clear(element, same)) {
          pairs.put(pair, item(element));
        } else {
          put(element, same);
        }
      } else if (element.lies(Lie.ROW)) {
        item(element);
      }
    }
  }

  private void describe(Item item) {
    double keys = 0;
    int counted = 0;
    for (Element element : item.elements) {
      extent(item, element);
      if (!hats.containsKey(element)) {
        taps(item, element);
      }
    }
    for (Tap tap : item.taps) {
      keys += flow.rank(tap.net()) + (tap.side() > 0 ? -0.5 : tap.side() < 0 ? 0.5 : 0);
      counted++;
    }
    Element first = item.elements.get(0);
    item.key = counted == 0 ? alone(first) : keys / counted;
    if (first.first().part().kind().source() && !first.lies(Lie.BLOCK)) {
      item.key = first.first().part().kind().swings() ? item.key - 1 : -3;
    } else if (first.first().part().kind().source()) {
      item.key = -3;
    } else if (rails.leadIn().filter(first.first().part().ref()::equals).isPresent()) {
      item.key = -2.5;
    } else if (first.lies(Lie.ROW)) {
      item.key += 1;
    }
  }

  /** What is from rail to rail: capacitors by the source, others at the end. */
  private double alone(Element first) {
    return worth(first) != 2 ? 0.25 : rails.fed() ? -2 : 1.5;
  }

  private void extent(Item item, Element element) {
    element.pieces().forEach(piece -> body(item, element, piece));
    if (element.lies(Lie.UPRIGHT)) {
      int over = end(element.from(), heights.top());
      int under = end(element.to(), heights.bottom());
      item.bars.add(new Bar(Math.min(over, under), Math.max(over, under), false, 0, 0));
    } else if (element.lies(Lie.BLOCK)) {
      item.bars.add(new Bar(heights.top(), heights.bottom(), false, 30, 30));
    }
  }

  private void body(Item item, Element element, Piece piece) {
    Area reach = Heights.reach(piece);
    int up = piece.y + (int) reach.y();
    int down = piece.y + (int) reach.bottom();
    if (element.lies(Lie.UPRIGHT)) {
      int label = (int) piece.bodyOffset().right() + piece.labelWidth() + LABEL_GAP;
      int right = Math.max(label, (int) reach.right());
      item.bars.add(new Bar(up, down, true, (int) -reach.x(), right));
    } else if (element.lies(Lie.BLOCK)) {
      int left = (int) -reach.x() + 10 * extra(piece, -1);
      int right = (int) reach.right() + 10 * extra(piece, 1);
      item.bars.add(new Bar(up - MARGIN, down + MARGIN, true, left, right));
    } else {
      int half = element.pieces().size() * Heights.ROW / 2;
      item.bars.add(new Bar(piece.y - 24, piece.y + 16, true, half, half));
    }
  }

  /** Lanes that a block's side may need. */
  private static int extra(Piece block, int side) {
    int ports = 0;
    for (int port = 0; port < block.ports(); port++) {
      if (block.outX(port) == side && block.net(port) != Nets.NONE) {
        ports++;
      }
    }
    return Math.min(ports, 4);
  }

  private int end(int net, int rail) {
    return net == Nets.NONE || rails.way(net) != 0 ? rail : heights.net(net);
  }

  private void taps(Item item, Element element) {
    for (Piece piece : element.pieces()) {
      for (int port = 0; port < piece.ports(); port++) {
        int net = piece.net(port);
        boolean outer = net == element.from() || net == element.to();
        boolean many = element.channel() || element.lies(Lie.BLOCK);
        if (net != Nets.NONE && rails.way(net) == 0 && (outer || many)) {
          int side =
              element.lies(Lie.UPRIGHT) && (!element.channel() || port != 1) ? 0 : piece.outX(port);
          int y = element.lies(Lie.UPRIGHT) ? heights.net(net) : piece.y + piece.offset(port).y();
          item.taps.add(new Tap(net, y, side));
        }
      }
    }
  }
}
