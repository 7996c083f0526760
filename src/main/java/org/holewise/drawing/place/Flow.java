package org.holewise.drawing.place;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.drawing.place.Element.Lie;
import org.holewise.drawing.symbol.Form.Manner;
import org.holewise.drawing.symbol.Turn;

/**
 * Which way signals go: each net's rank counts the steps from an input to it. A base or gate leads
 * to its channel's ends, a block's left pins to its right ones; level pieces lead both ways.
 */
final class Flow {
  private static final int UNKNOWN = Integer.MAX_VALUE;

  private final List<Piece> pieces;
  private final List<Element> elements;
  private final Rails rails;
  private final int[] rank;

  Flow(List<Piece> pieces, List<Element> elements, Nets nets, Rails rails) {
    this.pieces = pieces;
    this.elements = elements;
    this.rails = rails;
    this.rank = new int[nets.size()];
    Arrays.fill(rank, UNKNOWN);
    for (Piece piece : pieces) {
      if (piece.part().kind().source()) {
        for (int port = 0; port < piece.ports(); port++) {
          start(piece.net(port));
        }
      }
    }
    spread();
    while (startAnother()) {
      spread();
    }
  }

  /** Steps from an input; 0 for a rail. */
  int rank(int net) {
    return signal(net) && rank[net] != UNKNOWN ? rank[net] : 0;
  }

  private boolean signal(int net) {
    return net != Nets.NONE && rails.way(net) == 0;
  }

  private void start(int net) {
    if (signal(net)) {
      rank[net] = 0;
    }
  }

  private void spread() {
    boolean again = true;
    for (int round = 0; again && round < 200; round++) {
      again = false;
      for (Element element : elements) {
        if (element.lies(Lie.LEVEL)) {
          again |= lead(element.from(), element.to(), 1);
          again |= lead(element.to(), element.from(), 1);
        } else if (element.lies(Lie.UPRIGHT) && !element.channel()) {
          again |= lead(element.from(), element.to(), 0);
          again |= lead(element.to(), element.from(), 0);
        } else if (element.first().kind("changeover")) {
          again |= throwOver(element.first());
        }
      }
      for (Piece piece : pieces) {
        again |= through(piece);
      }
    }
  }

  private boolean throwOver(Piece piece) {
    boolean moved = false;
    for (int port = 1; port < piece.ports(); port++) {
      moved |= lead(piece.net(0), piece.net(port), 1);
      moved |= lead(piece.net(port), piece.net(0), 1);
    }
    return moved;
  }

  private boolean through(Piece piece) {
    boolean moved = false;
    for (int in = 0; in < piece.ports(); in++) {
      for (int out = 0; out < piece.ports(); out++) {
        if (leads(piece, in, out)) {
          moved |= lead(piece.net(in), piece.net(out), piece.outX(out) > 0 ? 2 : 1);
        }
      }
    }
    return moved;
  }

  private static boolean leads(Piece piece, int in, int out) {
    return switch (piece.form().manner()) {
      case TWO_ENDED -> false;
      case CHANNEL -> piece.kind("potentiometer") ? in != 1 && out == 1 : in == 1 && out != 1;
      default -> !piece.kind("changeover") && piece.outX(in) < 0 && piece.outX(out) > 0;
    };
  }

  private boolean lead(int from, int to, int steps) {
    if (!signal(from) || !signal(to) || rank[from] == UNKNOWN || rank[to] <= rank[from] + steps) {
      return false;
    }
    rank[to] = rank[from] + steps;
    return true;
  }

  /** Nets begin that nothing leads to; first of them those that a rail feeds from above. */
  private boolean startAnother() {
    int[] group = groups();
    boolean[] led = new boolean[rank.length];
    for (int net = 0; net < rank.length; net++) {
      led[group[net]] |= led(net);
    }
    int best = Nets.NONE;
    for (int net = 0; net < rank.length; net++) {
      if (signal(net)
          && rank[net] == UNKNOWN
          && (best == Nets.NONE || start(net, led[group[net]]) < start(best, led[group[best]]))) {
        best = net;
      }
    }
    if (best == Nets.NONE) {
      return false;
    }
    for (int net = 0; net < rank.length; net++) {
      boolean alike = start(best, led[group[best]]) == 0 && start(net, led[group[net]]) == 0;
      if (net == best || (alike && signal(net) && rank[net] == UNKNOWN)) {
        rank[net] = 0;
      }
    }
    return true;
  }

  private int start(int net, boolean led) {
    return (led ? 2 : 0) + (fed(net) ? 0 : 1);
  }

  private boolean fed(int net) {
    return elements.stream()
        .anyMatch(
            e ->
                (e.lies(Lie.UPRIGHT) && e.to() == net && rails.way(e.from()) > 0 && !e.channel())
                    || (e.first().kind("changeover")
                        && e.first().on(net)
                        && rails.way(e.first().net(0)) > 0));
  }

  /** Nets that level elements join have a group in common. */
  private int[] groups() {
    int[] group = new int[rank.length];
    for (int net = 0; net < group.length; net++) {
      group[net] = net;
    }
    for (Element element : elements) {
      if (element.lies(Lie.LEVEL) && signal(element.from()) && signal(element.to())) {
        int old = group[element.from()];
        int now = group[element.to()];
        for (int net = 0; net < group.length; net++) {
          group[net] = group[net] == old ? now : group[net];
        }
      }
    }
    return group;
  }

  private boolean led(int net) {
    for (Piece piece : pieces) {
      for (int in = 0; in < piece.ports(); in++) {
        for (int out = 0; out < piece.ports(); out++) {
          if (leads(piece, in, out) && piece.net(out) == net && piece.net(in) != net) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** Turns changeovers round whose two sides come first. */
  void faceChangeovers() {
    for (Piece piece : pieces) {
      if (piece.kind("changeover")) {
        boolean fed = rails.way(piece.net(0)) > 0;
        boolean ends = rails.way(piece.net(1)) != 0 || rails.way(piece.net(2)) != 0;
        if (!fed && (ends || gathers(piece))) {
          piece.turn(Turn.MIRRORED);
        }
      }
    }
  }

  /** Whether one of two signals goes on: into a block, else to what comes later. */
  private boolean gathers(Piece changeover) {
    boolean on = enters(changeover.net(0));
    boolean back = enters(changeover.net(1)) || enters(changeover.net(2));
    int most = Math.max(rank(changeover.net(1)), rank(changeover.net(2)));
    return on == back ? most < rank(changeover.net(0)) : on;
  }

  /** Whether a signal enters a block from the left. */
  private boolean enters(int net) {
    for (Piece piece : pieces) {
      for (int port = 0; port < piece.ports(); port++) {
        if (piece.manner(Manner.BLOCK)
            && !piece.kind("changeover")
            && piece.net(port) == net
            && piece.outX(port) < 0) {
          return true;
        }
      }
    }
    return false;
  }

  /** Level elements that lead back to a block, or over it, with that block. */
  Map<Element, Piece> hats() {
    var hats = new LinkedHashMap<Element, Piece>();
    for (Element element : elements) {
      if (element.lies(Lie.LEVEL)) {
        for (Piece piece : pieces) {
          if (!hats.containsKey(element) && over(element, piece)) {
            hats.put(element, piece);
          }
        }
      }
    }
    return hats;
  }

  private boolean over(Element element, Piece block) {
    boolean out = false;
    boolean back = false;
    int least = UNKNOWN;
    for (int port = 0; port < block.ports(); port++) {
      int net = block.net(port);
      if (!signal(net)) {
        continue;
      }
      if (block.outX(port) > 0) {
        out |= net == element.from() || net == element.to();
      } else if (block.outX(port) < 0) {
        least = Math.min(least, rank(net));
        back |= net == element.from() || net == element.to();
      }
    }
    int other = Math.min(rank(element.from()), rank(element.to()));
    return block.manner(Manner.BLOCK)
        && !block.part().kind().source()
        && !block.kind("changeover")
        && out
        && (back || other <= least && element.from() != element.to());
  }
}
