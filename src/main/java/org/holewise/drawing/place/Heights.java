package org.holewise.drawing.place;

import java.util.List;
import org.holewise.drawing.place.Element.Lie;
import org.holewise.drawing.sheet.Area;

/**
 * How high everything stands. Each signal net has a height at which it would like to run; pieces
 * keep their distances from it; what is wished for beyond that (a base at its net's height, a level
 * piece at the height of both its nets) is granted in turn as far as it can be.
 */
final class Heights {
  private static final int RAIL_GAP = 20;
  private static final int GAP = 10;

  /** From one piece of a column to the next (px). */
  static final int PITCH = 70;

  /** From one piece of a row to the next (px). */
  static final int ROW = 80;

  private final List<Piece> pieces;
  private final List<Element> elements;
  private final Rails rails;
  private final int nets;
  private final Scale scale;
  private final Levels levels;

  Heights(List<Piece> pieces, List<Element> elements, Nets nets, Rails rails, Flow flow) {
    this.pieces = pieces;
    this.elements = elements;
    this.rails = rails;
    this.nets = nets.size();
    this.scale = new Scale(nets.size(), pieces.size(), rails);
    this.levels = scale.levels;
    inside();
    stacks();
    blocks();
    sides();
    new RowHeights(elements, scale, flow).settle();
    lows();
    place();
  }

  int top() {
    return levels.of(Scale.TOP);
  }

  int bottom() {
    return levels.of(Scale.BOTTOM);
  }

  /** The height of a signal net. */
  int net(int net) {
    return levels.of(scale.of(net));
  }

  /** A regulator whose input is the supply stands in its line, and its output carries that on. */
  private void inLine() {
    for (Piece piece : pieces) {
      int in = piece.kind("regulator") ? piece.port("in") : -1;
      int out = piece.port("out");
      if (in < 0 || rails.top() == Nets.NONE || piece.net(in) != rails.top()) {
        continue;
      }
      levels.level(Scale.TOP, scale.of(piece), -piece.offset(in).y());
      if (out >= 0 && scale.signal(piece.net(out))) {
        levels.level(Scale.TOP, scale.of(piece.net(out)), 0);
      }
    }
  }

  private boolean inLine(Piece piece) {
    return piece.kind("regulator")
        && rails.top() != Nets.NONE
        && levels.of(scale.of(piece)) == 0
        && piece.on(rails.top());
  }

  private boolean inLine(int net) {
    return pieces.stream().anyMatch(piece -> inLine(piece) && piece.on(net));
  }

  /** All is between the rails. */
  private void inside() {
    levels.under(Scale.TOP, Scale.BOTTOM, 120);
    inLine();
    for (int net = 0; net < nets; net++) {
      levels.under(Scale.TOP, scale.of(net), inLine(net) ? 0 : RAIL_GAP + GAP);
      levels.under(scale.of(net), Scale.BOTTOM, RAIL_GAP + GAP);
    }
    for (Element element : elements) {
      for (Piece piece : element.pieces()) {
        Area body = reach(piece);
        boolean upright = element.lies(Lie.UPRIGHT);
        int room = upright ? RAIL_GAP : RAIL_GAP + 20;
        if (!inLine(piece)) {
          levels.under(Scale.TOP, scale.of(piece), room - (int) body.y());
        }
        levels.under(scale.of(piece), Scale.BOTTOM, room + (int) body.bottom());
      }
    }
  }

  private void stacks() {
    for (Element element : elements) {
      if (!element.lies(Lie.UPRIGHT)) {
        continue;
      }
      for (int i = 1; i < element.pieces().size(); i++) {
        levels.under(
            scale.of(element.pieces().get(i - 1)), scale.of(element.pieces().get(i)), PITCH);
      }
      if (scale.signal(element.from())) {
        levels.under(2 + element.from(), scale.of(element.first()), 30 + GAP);
      }
      if (scale.signal(element.to())) {
        levels.under(scale.of(element.last()), 2 + element.to(), 30 + GAP);
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
        if (scale.signal(net) && block.outY(port) < 0) {
          levels.under(scale.of(net), scale.of(block), GAP - off);
        } else if (scale.signal(net) && block.outY(port) > 0) {
          levels.under(scale.of(block), scale.of(net), GAP + off);
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
        if (side && !level && scale.signal(piece.net(port))) {
          levels.level(2 + piece.net(port), scale.of(piece), -piece.offset(port).y());
        }
      }
    }
  }

  /** What stands on the return stands at the bottom, with its whole stack. */
  private void lows() {
    for (Element element : elements) {
      boolean grounded = element.lies(Lie.UPRIGHT) && rails.way(element.to()) < 0;
      boolean whole = rails.way(element.from()) != 0;
      if (grounded && !whole && !element.channel()) {
        List<Piece> stack = element.pieces();
        for (int i = stack.size() - 1; i >= 0; i--) {
          levels.level(
              scale.of(stack.get(i)), Scale.BOTTOM, RAIL_GAP + 30 + PITCH * (stack.size() - 1 - i));
        }
      }
    }
  }

  private void place() {
    for (Piece piece : pieces) {
      piece.y = levels.of(scale.of(piece));
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
    int over = scale.signal(element.from()) ? net(element.from()) : top();
    int under = scale.signal(element.to()) ? net(element.to()) : bottom();
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
}
