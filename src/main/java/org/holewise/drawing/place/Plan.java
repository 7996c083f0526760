package org.holewise.drawing.place;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.holewise.drawing.place.Element.Lie;
import org.holewise.drawing.symbol.Form.Manner;
import org.holewise.drawing.symbol.Turn;

/**
 * Makes out which pieces stand and which lie. Two-ended pieces in series are one element. One that
 * touches a rail stands; so does one that carries on a current from above to below. The others lie
 * between their nets.
 */
final class Plan {
  private final List<Piece> pieces;
  private final Nets nets;
  private final Rails rails;
  private final List<Element> elements = new ArrayList<>();
  private final boolean[] used;

  Plan(List<Piece> pieces, Nets nets, Rails rails) {
    this.pieces = pieces;
    this.nets = nets;
    this.rails = rails;
    this.used = new boolean[pieces.size()];
    for (Piece piece : pieces) {
      if (!used[piece.id]) {
        add(piece);
      }
    }
    carryOn();
    elements.forEach(this::turn);
  }

  List<Element> elements() {
    return elements;
  }

  private void add(Piece piece) {
    used[piece.id] = true;
    switch (piece.form().manner()) {
      case BLOCK -> elements.add(new Element(Lie.BLOCK, Nets.NONE, Nets.NONE, List.of(piece)));
      case CHANNEL -> elements.add(channel(piece));
      default -> elements.add(series(piece));
    }
  }

  private Element channel(Piece piece) {
    int top = piece.net(0);
    int bottom = piece.net(2);
    boolean over =
        piece.kind("potentiometer")
            ? rails.way(top) < 0 || rails.way(bottom) > 0
            : piece.kind("pnp") || piece.kind("pmos");
    if (over) {
      piece.turn(Turn.FLIPPED);
    }
    return new Element(Lie.UPRIGHT, over ? bottom : top, over ? top : bottom, List.of(piece));
  }

  private Element series(Piece piece) {
    var chain = new ArrayList<Piece>(List.of(piece));
    int from = piece.net(0);
    int to = piece.net(1);
    if (joins(piece)) {
      for (var next = next(from, chain); next.isPresent(); next = next(from, chain)) {
        from = other(next.get(), from);
        chain.add(0, next.get());
      }
      for (var next = next(to, chain); next.isPresent(); next = next(to, chain)) {
        to = other(next.get(), to);
        chain.add(next.get());
      }
    }
    return laid(chain, from, to);
  }

  private boolean joins(Piece piece) {
    return piece.manner(Manner.TWO_ENDED)
        && !piece.part().kind().source()
        && !rails.leadIn().filter(piece.part().ref()::equals).isPresent();
  }

  /** Capacitors couple or decouple: what is in series with one has a node of its own with it. */
  private static boolean stores(Piece piece) {
    return piece.kind("capacitor") || piece.kind("electrolytic");
  }

  private static int other(Piece piece, int net) {
    return piece.net(0) == net ? piece.net(1) : piece.net(0);
  }

  /** The one piece that carries on the line over a net that joins nothing else. */
  private Optional<Piece> next(int net, List<Piece> chain) {
    if (net == Nets.NONE || rails.way(net) != 0 || nets.pins(net).size() != 2) {
      return Optional.empty();
    }
    Optional<Piece> found =
        pieces.stream()
            .filter(piece -> !used[piece.id] && !chain.contains(piece))
            .filter(piece -> joins(piece) && piece.on(net))
            .filter(piece -> stores(piece) == stores(chain.get(0)))
            .findFirst();
    found.ifPresent(piece -> used[piece.id] = true);
    return found;
  }

  private Element laid(List<Piece> chain, int from, int to) {
    boolean lead =
        chain.stream().anyMatch(p -> rails.leadIn().filter(p.part().ref()::equals).isPresent());
    int a = rails.way(from);
    int b = rails.way(to);
    boolean source = chain.get(0).part().kind().source();
    if (lead || (a == 0 && b == 0 && !source)) {
      boolean back = lead && a != 0;
      return back ? reversed(Lie.LEVEL, chain, from, to) : new Element(Lie.LEVEL, from, to, chain);
    }
    if (rowed(chain, from, to)) {
      return a != 0 ? reversed(Lie.ROW, chain, from, to) : new Element(Lie.ROW, from, to, chain);
    }
    boolean over = source ? sourceOver(from, to) : height(from, b) < height(to, a);
    return over
        ? reversed(Lie.UPRIGHT, chain, from, to)
        : new Element(Lie.UPRIGHT, from, to, chain);
  }

  private boolean sourceOver(int from, int to) {
    return rails.way(from) != 0 && rails.way(to) != 0 && rails.volts(from) < rails.volts(to);
  }

  /** A rail by its voltage; a signal is below what feeds and above what returns. */
  private double height(int net, int otherWay) {
    if (rails.way(net) != 0) {
      return rails.way(net) > 0 ? 1 + rails.volts(net) : rails.volts(net) - 1;
    }
    return otherWay > 0 ? 0 : 0.5;
  }

  private static Element reversed(Lie lie, List<Piece> chain, int from, int to) {
    var back = new ArrayList<>(chain);
    Collections.reverse(back);
    return new Element(lie, to, from, back);
  }

  /** Whether it hangs on a chip's pin alone, beside another that does. */
  private boolean rowed(List<Piece> chain, int from, int to) {
    return rails.way(from) == 0 && rails.way(to) != 0
        ? onRow(chain, from)
        : rails.way(to) == 0 && rails.way(from) != 0 && onRow(chain, to);
  }

  private boolean onRow(List<Piece> chain, int net) {
    return block(net)
        .filter(block -> rows(block, side(block, net)) > 1)
        .filter(block -> !chain.contains(block))
        .isPresent();
  }

  private Optional<Piece> block(int net) {
    return net == Nets.NONE || nets.pins(net).size() != 2
        ? Optional.empty()
        : pieces.stream()
            .filter(p -> p.manner(Manner.BLOCK) && p.on(net) && side(p, net) != 0)
            .findFirst();
  }

  private static int side(Piece block, int net) {
    for (int port = 0; port < block.ports(); port++) {
      if (block.net(port) == net) {
        return block.outX(port);
      }
    }
    return 0;
  }

  /** How many of a block's pins on a side have one two-ended piece each. */
  private long rows(Piece block, int side) {
    long rows = 0;
    for (int port = 0; port < block.ports(); port++) {
      int net = block.net(port);
      if (block.outX(port) == side
          && net != Nets.NONE
          && rails.way(net) == 0
          && nets.pins(net).size() == 2
          && pieces.stream().anyMatch(p -> p != block && joins(p) && p.on(net))) {
        rows++;
      }
    }
    return rows;
  }

  /** Level ones stand where a current comes from above and has nowhere else to go. */
  private void carryOn() {
    for (boolean again = true; again; ) {
      again = false;
      for (int i = 0; i < elements.size() && !again; i++) {
        Element element = elements.get(i);
        if (element.lies(Lie.LEVEL) && !coupling(element)) {
          if (carries(element.from(), element.to())) {
            elements.set(i, element.as(Lie.UPRIGHT));
            again = true;
          } else if (carries(element.to(), element.from())) {
            elements.set(i, reversed(Lie.UPRIGHT, element.pieces(), element.from(), element.to()));
            again = true;
          }
        }
      }
    }
  }

  private boolean coupling(Element element) {
    return element.pieces().stream()
        .anyMatch(p -> stores(p) || rails.leadIn().filter(p.part().ref()::equals).isPresent());
  }

  private boolean carries(int above, int below) {
    return rails.way(above) == 0
        && rails.way(below) == 0
        && stands(above, true)
        && !stands(above, false)
        && (stands(below, false) || drained(below));
  }

  /** Whether something stands over a net, or under it. */
  private boolean stands(int net, boolean over) {
    return net != Nets.NONE
        && elements.stream()
            .filter(e -> e.lies(Lie.UPRIGHT) && !coupling(e))
            .anyMatch(e -> (over ? e.to() : e.from()) == net);
  }

  /** Whether a capacitor leads from a net to a return. */
  private boolean drained(int net) {
    return elements.stream()
        .anyMatch(e -> e.lies(Lie.UPRIGHT) && e.from() == net && rails.way(e.to()) < 0);
  }

  /** Turns the pieces of an element so that it begins with its first net. */
  private void turn(Element element) {
    if (element.lies(Lie.BLOCK) || element.channel()) {
      return;
    }
    boolean upright = element.lies(Lie.UPRIGHT);
    int net = element.from();
    for (Piece piece : element.pieces()) {
      boolean along = piece.net(0) == net && (piece.net(1) != net || net != Nets.NONE);
      if (net == Nets.NONE && element.pieces().size() == 1) {
        along = piece.net(1) == element.to() || element.to() == Nets.NONE;
      }
      piece.turn(turn(upright, along));
      net = along ? piece.net(1) : piece.net(0);
    }
  }

  static Turn turn(boolean upright, boolean along) {
    if (upright) {
      return along ? Turn.DOWN : new Turn(1, true);
    }
    return along ? Turn.NONE : Turn.MIRRORED;
  }
}
