package org.holewise.drawing.place;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.drawing.place.Element.Lie;

/**
 * The heights of what lies: at that of its nets; what leads back over a block, above or below it;
 * the second of two side by side above the first; what leaves one net beside another below that.
 */
final class RowHeights {

  /** Between level pieces one above the other (px). */
  private static final int HAT = 50;

  /** Room for a supply symbol between a block and what hangs over it (px). */
  private static final int SYMBOL = 30;

  private final List<Element> elements;
  private final Scale scale;
  private final Levels levels;
  private final Rails rails;
  private final Flow flow;
  private final Map<Element, Piece> hats;
  private final List<Element> laid = new ArrayList<>();
  private final List<String> parallel = new ArrayList<>();

  RowHeights(List<Element> elements, Scale scale, Flow flow) {
    this.elements = elements;
    this.scale = scale;
    this.levels = scale.levels;
    this.rails = scale.rails;
    this.flow = flow;
    this.hats = flow.hats();
  }

  /** Level pieces at the height of their nets; the second of two beside each other above it. */
  void settle() {
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
    int up = (int) Heights.reach(block).y() - 20 - room(block, -1) - (row - 1) * HAT;
    int down = (int) Heights.reach(block).bottom() + 20 + room(block, 1) + (row - 1) * HAT;
    boolean above = above(element, block);
    for (Piece piece : element.pieces()) {
      if (above) {
        levels.under(scale.of(piece), scale.of(block), -up);
        levels.level(scale.of(block), scale.of(piece), up);
      } else {
        levels.under(scale.of(block), scale.of(piece), down);
        levels.level(scale.of(block), scale.of(piece), down);
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
        levels.level(scale.of(first), scale.of(piece), 0);
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
      levels.level(2 + element.to(), scale.of(first), up);
    } else if (backed(element, element.from())) {
      levels.level(2 + element.from(), scale.of(first), up);
    } else {
      boolean forth = flow.rank(element.from()) <= flow.rank(element.to());
      Optional<Element> beside = before > 0 ? Optional.empty() : fanned(element, forth);
      beside.ifPresent(other -> levels.under(scale.of(other.first()), scale.of(first), HAT));
      if (scale.signal(element.from())
          && (beside.isEmpty() || !shares(beside.get(), element.from()))) {
        levels.level(2 + element.from(), scale.of(first), up);
      }
      if (scale.signal(element.to())
          && element.to() != element.from()
          && (beside.isEmpty() || !shares(beside.get(), element.to()))) {
        levels.level(2 + element.to(), scale.of(first), up);
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
              return (scale.signal(left) && from == left) || (scale.signal(right) && to == right);
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
}
