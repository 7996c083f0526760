package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;

/** The holes of a build: which are free, and how far apart they are. */
final class Ground {
  final BoardModel board;
  private final Terminals terminals;
  private final Build build;
  private final Set<Hole> taken = new LinkedHashSet<>();
  private final Map<Integer, List<Hole>> freeOf = new LinkedHashMap<>();

  Ground(Terminals terminals, Build build) {
    this.terminals = terminals;
    this.build = build;
    board = build.board();
    build.placed().forEach(part -> taken.addAll(part.holes().values()));
    build.links().forEach(link -> taken.addAll(List.of(link.from(), link.to())));
  }

  Optional<Hole> hole(int pin) {
    var named = terminals.pins.get(pin);
    return build.placed(named.ref()).flatMap(part -> part.hole(named.name()));
  }

  Link link(int link) {
    return build.links().get(link);
  }

  Hole hole(int link, int end) {
    return link(link).end(end);
  }

  /** The hole of a pin, else of another pin of its part, else the corner of the board. */
  Hole near(int pin) {
    return hole(pin)
        .or(
            () ->
                build
                    .placed(terminals.pins.get(pin).ref())
                    .flatMap(part -> part.holes().values().stream().findFirst()))
        .orElse(new Hole(1, "a", 1));
  }

  /** Free holes of some strips, the nearest to a hole first. */
  List<Hole> free(Collection<Integer> strips, Hole near) {
    var free = new ArrayList<Hole>();
    strips.forEach(strip -> free.addAll(free(strip)));
    long[] order = new long[free.size()];
    for (int i = 0; i < order.length; i++) {
      order[i] = ((long) distance(free.get(i), near) << 32) + i;
    }
    Arrays.sort(order);
    return Arrays.stream(order).mapToObj(key -> free.get((int) key)).toList();
  }

  /** The free hole of some strips that is nearest to a free one of others; else any corner. */
  Hole nearest(Collection<Integer> strips, Collection<Integer> others) {
    Hole best = new Hole(1, "a", 1);
    int least = Integer.MAX_VALUE;
    for (int strip : strips) {
      for (int other : others) {
        for (Hole hole : free(strip)) {
          for (Hole there : free(other)) {
            if (distance(hole, there) < least) {
              least = distance(hole, there);
              best = hole;
            }
          }
        }
      }
    }
    return best;
  }

  private List<Hole> free(int strip) {
    return freeOf.computeIfAbsent(
        strip, s -> board.holes(s).stream().filter(hole -> !taken.contains(hole)).toList());
  }

  /**
   * The nearest strip that nothing touches, a rail only if there is no other; on a board without
   * any, the one where the pin is.
   */
  int fresh(Layout layout, int pin, Collection<Integer> but) {
    int best = -1;
    int least = Integer.MAX_VALUE;
    for (int strip = 0; strip < layout.strips(); strip++) {
      if (!but.contains(strip) && untouched(layout, strip)) {
        int rail = board.rail(strip).isPresent() ? 1_000_000 : 0;
        int away = rail + distance(board.holes(strip).get(0), near(pin));
        if (away < least) {
          least = away;
          best = strip;
        }
      }
    }
    return best < 0 ? Math.max(0, layout.pin()[pin]) : best;
  }

  private static boolean untouched(Layout layout, int strip) {
    for (int other : layout.pin()) {
      if (other == strip) {
        return false;
      }
    }
    for (int other : layout.end()) {
      if (other == strip) {
        return false;
      }
    }
    return true;
  }

  /** Square of the distance, in pitches; rails are taken as a pitch beyond the rows. */
  static int distance(Hole one, Hole other) {
    int along = one.column() - other.column();
    int across = across(one.track()) - across(other.track()) + 40 * (one.board() - other.board());
    return along * along + across * across;
  }

  private static int across(String track) {
    char row = track.charAt(track.length() - 1);
    int beyond = track.length() == 1 ? 0 : track.charAt(0) == '+' ? 2 : 3;
    return row < 'f' ? row - 'a' - beyond : row - 'a' + 2 + beyond;
  }
}
