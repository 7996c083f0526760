package org.holewise.drawing.place;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.drawing.place.Element.Lie;
import org.holewise.drawing.sheet.Area;

/**
 * How high everything stands. Each signal net has a height at which it would like to run; pieces
 * keep their distances from it; what is wished for beyond that (a base at its net's height, a level
 * piece at the height of both its nets) is granted in turn as far as it can be.
 */
final class Heights {
  private static final int TOP = 0;
  private static final int BOTTOM = 1;
  private static final int RAIL_GAP = 20;
  private static final int GAP = 10;

  /** From one piece of a column to the next (px). */
  static final int PITCH = 70;

  /** From one piece of a row to the next (px). */
  static final int ROW = 80;

  /** Between level pieces one above the other (px). */
  static final int HAT = 50;

  private static final int SYMBOL = 30;

  private final List<Piece> pieces;
  private final List<Element> elements;
  private final Rails rails;
  private final int nets;
  private final Map<Element, Piece> hats;
  private final Levels levels;
  private final Flow flow;
  private final List<Element> laid = new ArrayList<>();
  private final List<String> parallel = new ArrayList<>();

  Heights(List<Piece> pieces, List<Element> elements, Nets nets, Rails rails, Flow flow) {
    this.pieces = pieces;
    this.elements = elements;
    this.rails = rails;
    this.nets = nets.size();
    this.flow = flow;
    this.hats = flow.hats();
    this.levels = new Levels(2 + nets.size() + pieces.size());
    inside();
    stacks();
    blocks();
    sides();
    rows();
    lows();
    place();
  }

  int top() {
    return levels.of(TOP);
  }

  int bottom() {
    return levels.of(BOTTOM);
  }

  /** The height of a signal net. */
  int net(int net) {
    return levels.of(2 + net);
  }

  private int at(Piece piece) {
    return 2 + nets + piece.id;
  }

  private boolean signal(int net) {
    return net != Nets.NONE && rails.way(net) == 0;
  }

  /** A regulator whose input is the supply stands in its line, and its output carries that on. */
  private void inLine() {
    for (Piece piece : pieces) {
      if (!piece.kind("regulator") || rails.top() == Nets.NONE || piece.net(0) != rails.top()) {
        continue;
      }
      levels.level(TOP, at(piece), -piece.offset(0).y());
      int out = piece.net(1);
      if (signal(out)) {
        levels.level(TOP, 2 + out, 0);
      }
    }
  }

  private boolean inLine(Piece piece) {
    return piece.kind("regulator") && levels.of(at(piece)) == 0 && piece.on(rails.top());
  }

  private boolean inLine(int net) {
    return pieces.stream().anyMatch(piece -> inLine(piece) && piece.on(net));
  }

  /** All is between the rails. */
  private void inside() {
    levels.under(TOP, BOTTOM, 120);
    inLine();
    for (int net = 0; net < nets; net++) {
      levels.under(TOP, 2 + net, inLine(net) ? 0 : RAIL_GAP + GAP);
      levels.under(2 + net, BOTTOM, RAIL_GAP + GAP);
    }
    for (Element element : elements) {
      for (Piece piece : element.pieces()) {
        Area body = reach(piece);
        boolean upright = element.lies(Lie.UPRIGHT);
        int room = upright ? RAIL_GAP : RAIL_GAP + 20;
        if (!inLine(piece)) {
          levels.under(TOP, at(piece), room - (int) body.y());
        }
        levels.under(at(piece), BOTTOM, room + (int) body.bottom());
      }
    }
  }

  /** Body and pins. */
  static Area reach(Piece piece) {
    Area area = piece.bodyOffset();
    for (int port = 0; port < piece.ports(); port++) {
      var p = piece.offset(port);
      area = area.with(new Area(p.x(), p.y(), 0, 0));
    }
    return Area.between(
        Math.floor(area.x() / 10) * 10,
        Math.floor(area.y() / 10) * 10,
        Math.ceil(area.right() / 10) * 10,
        Math.ceil(area.bottom() / 10) * 10);
  }

  private void stacks() {
    for (Element element : elements) {
      if (!element.lies(Lie.UPRIGHT)) {
        continue;
      }
      for (int i = 1; i < element.pieces().size(); i++) {
        levels.under(at(element.pieces().get(i - 1)), at(element.pieces().get(i)), PITCH);
      }
      if (signal(element.from())) {
        levels.under(2 + element.from(), at(element.first()), 30 + GAP);
      }
      if (signal(element.to())) {
        levels.under(at(element.last()), 2 + element.to(), 30 + GAP);
      }
    }
  }

  private void blocks() {
    for (Element element : elements) {
      if (!element.lies(Lie.BLOCK)) {
        continue;
      }
      Piece block = element.first();
      for (int port = 0; port < block.ports(); port++) {
        int net = block.net(port);
        int off = block.offset(port).y();
        if (signal(net) && block.outY(port) < 0) {
          levels.under(2 + net, at(block), GAP - off);
        } else if (signal(net) && block.outY(port) > 0) {
          levels.under(at(block), 2 + net, GAP + off);
        }
      }
    }
  }

  /** Side pins at the height of their nets. */
  private void sides() {
    for (Piece piece : pieces) {
      for (int port = 0; port < piece.ports(); port++) {
        boolean side = piece.outX(port) != 0 && rails.way(piece.net(port)) == 0;
        boolean level =
            elements.stream().anyMatch(e -> e.lies(Lie.LEVEL) && e.pieces().contains(piece));
        if (side && !level && signal(piece.net(port))) {
          levels.level(2 + piece.net(port), at(piece), -piece.offset(port).y());
        }
      }
    }
  }

  /** Level pieces at the height of their nets; the second of two beside each other above it. */
  private void rows() {
    var hatRows = new LinkedHashMap<Piece, Integer>();
    for (Element element : elements) {
      if (hats.containsKey(element)) {
        Piece block = hats.get(element);
        int row = hatRows.merge(block, 1, Integer::sum);
        hat(element, block, row);
      } else if (element.lies(Lie.LEVEL) || element.lies(Lie.ROW)) {
        level(element);
      }
    }
  }

  private void hat(Element element, Piece block, int row) {
    int up = (int) reach(block).y() - 20 - room(block, -1) - (row - 1) * HAT;
    int down = (int) reach(block).bottom() + 20 + room(block, 1) + (row - 1) * HAT;
    boolean above = above(element, block);
    for (Piece piece : element.pieces()) {
      if (above) {
        levels.under(at(piece), at(block), -up);
        levels.level(at(block), at(piece), up);
      } else {
        levels.under(at(block), at(piece), down);
        levels.level(at(block), at(piece), down);
      }
    }
  }

  /** For a supply symbol at a block's end. */
  private int room(Piece block, int way) {
    for (int port = 0; port < block.ports(); port++) {
      if (block.outY(port) == way && rails.way(block.net(port)) != 0) {
        return SYMBOL;
      }
    }
    return 0;
  }

  /** Feedback to a lower input runs below; all else above. */
  static boolean above(Element element, Piece block) {
    int lowest = Integer.MIN_VALUE;
    int in = Integer.MIN_VALUE;
    for (int port = 0; port < block.ports(); port++) {
      if (block.outX(port) < 0) {
        lowest = Math.max(lowest, block.offset(port).y());
        int net = block.net(port);
        if (!drives(block, net) && (net == element.from() || net == element.to())) {
          in = block.offset(port).y();
        }
      }
    }
    return in == Integer.MIN_VALUE || in < lowest || lowest <= 0;
  }

  private static boolean drives(Piece block, int net) {
    for (int port = 0; port < block.ports(); port++) {
      if (block.outX(port) > 0 && block.net(port) == net) {
        return true;
      }
    }
    return false;
  }

  private void level(Element element) {
    Piece first = element.first();
    for (Piece piece : element.pieces()) {
      if (piece != first) {
        levels.level(at(first), at(piece), 0);
      }
    }
    if (rails.leadIn().filter(first.part().ref()::equals).isPresent()) {
      return;
    }
    String pair =
        Math.min(element.from(), element.to()) + " " + Math.max(element.from(), element.to());
    int before = (int) parallel.stream().filter(pair::equals).count();
    parallel.add(pair);
    int up = -before * HAT;
    if (backed(element, element.to())) {
      levels.level(2 + element.to(), at(first), up);
    } else if (backed(element, element.from())) {
      levels.level(2 + element.from(), at(first), up);
    } else {
      boolean forth = flow.rank(element.from()) <= flow.rank(element.to());
      Optional<Element> beside = before > 0 ? Optional.empty() : fanned(element, forth);
      beside.ifPresent(other -> levels.under(at(other.first()), at(first), HAT));
      if (signal(element.from()) && (beside.isEmpty() || !shares(beside.get(), element.from()))) {
        levels.level(2 + element.from(), at(first), up);
      }
      if (signal(element.to())
          && element.to() != element.from()
          && (beside.isEmpty() || !shares(beside.get(), element.to()))) {
        levels.level(2 + element.to(), at(first), up);
      }
    }
    laid.add(element);
  }

  private static boolean shares(Element element, int net) {
    return element.from() == net || element.to() == net;
  }

  /** The last element that leaves the same net forwards, or comes to the same net from behind. */
  private Optional<Element> fanned(Element element, boolean forth) {
    int left = forth ? element.from() : element.to();
    int right = forth ? element.to() : element.from();
    return laid.stream()
        .filter(
            other -> {
              boolean its = flow.rank(other.from()) <= flow.rank(other.to());
              int from = its ? other.from() : other.to();
              int to = its ? other.to() : other.from();
              return (signal(left) && from == left) || (signal(right) && to == right);
            })
        .reduce((a, b) -> b);
  }

  /** Whether an element leads from that end of a channel back to its side. */
  private boolean backed(Element element, int end) {
    int side = element.from() == end ? element.to() : element.from();
    return elements.stream()
        .filter(Element::channel)
        .anyMatch(e -> e.first().net(1) == side && e.from() == end);
  }

  /** What stands on the return stands at the bottom, with its whole stack. */
  private void lows() {
    for (Element element : elements) {
      boolean grounded = element.lies(Lie.UPRIGHT) && rails.way(element.to()) < 0;
      boolean whole = rails.way(element.from()) != 0;
      if (grounded && !whole && !element.channel()) {
        List<Piece> stack = element.pieces();
        for (int i = stack.size() - 1; i >= 0; i--) {
          levels.level(at(stack.get(i)), BOTTOM, RAIL_GAP + 30 + PITCH * (stack.size() - 1 - i));
        }
      }
    }
  }

  private void place() {
    for (Piece piece : pieces) {
      piece.y = levels.of(at(piece));
    }
    for (Element element : elements) {
      if (element.lies(Lie.UPRIGHT) && !element.channel() && between(element)) {
        spread(element);
      }
    }
    lead();
  }

  private boolean between(Element element) {
    boolean above = rails.way(element.from()) != 0;
    boolean below = rails.way(element.to()) != 0;
    return above == below;
  }

  /** From rail to rail, or from net to net: as much room above as below. */
  private void spread(Element element) {
    int over = signal(element.from()) ? net(element.from()) : top();
    int under = signal(element.to()) ? net(element.to()) : bottom();
    int n = element.pieces().size();
    int free = under - over - 60 - (n - 1) * PITCH;
    int step = free >= 0 ? PITCH + free / (n + 1) / 10 * 10 : PITCH;
    int start = (under + over - (n - 1) * step) / 20 * 10;
    if (free >= 0) {
      for (int i = 0; i < n; i++) {
        element.pieces().get(i).y = start + i * step;
      }
    }
  }

  private void lead() {
    for (Element element : elements) {
      if (rails.leadIn().filter(element.first().part().ref()::equals).isPresent()
          && element.lies(Lie.LEVEL)) {
        element.pieces().forEach(piece -> piece.y = top());
      }
    }
  }
}
