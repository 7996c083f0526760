package org.holewise.engine.netlist;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.part.Pin;

/**
 * Nets by walking from hole to hole, the slow way, with an idea of its own of which holes touch:
 * the oracle of the extraction's tests. Knows rails by their printed columns, gap at 32.
 */
final class FloodFill {
  private final BoardModel board;
  private final List<Link> links;

  FloodFill(Build build) {
    board = build.board();
    links = build.links();
  }

  /** The pins that can be reached from each pin. */
  static Map<Pin, Set<Pin>> reach(Build build, List<Pin> pins) {
    var fill = new FloodFill(build);
    var reach = new LinkedHashMap<Pin, Set<Pin>>();
    for (Pin pin : pins) {
      var touched = new LinkedHashSet<Pin>(List.of(pin));
      build
          .placed(pin.ref())
          .flatMap(placed -> placed.hole(pin.name()))
          .filter(fill::there)
          .ifPresent(
              start -> {
                var holes = fill.from(start);
                pins.stream().filter(other -> fill.in(build, holes, other)).forEach(touched::add);
              });
      reach.put(pin, touched);
    }
    return reach;
  }

  private boolean in(Build build, List<Hole> holes, Pin pin) {
    return build
        .placed(pin.ref())
        .flatMap(placed -> placed.hole(pin.name()))
        .filter(this::there)
        .filter(hole -> holes.stream().anyMatch(other -> touch(hole, other)))
        .isPresent();
  }

  private List<Hole> from(Hole start) {
    var reached = new ArrayList<Hole>(List.of(start));
    var open = new ArrayDeque<Hole>(reached);
    var used = new LinkedHashSet<Link>();
    while (!open.isEmpty()) {
      Hole hole = open.remove();
      for (Link link : links) {
        for (int end = 0; end < 2; end++) {
          if (!used.contains(link)
              && there(link.from())
              && there(link.to())
              && touch(hole, link.end(end))) {
            used.add(link);
            reached.add(link.end(1 - end));
            open.add(link.end(1 - end));
          }
        }
      }
    }
    return reached;
  }

  private boolean there(Hole hole) {
    if (hole.rail()) {
      return !board.name().equals("170")
          && hole.column() <= board.columns()
          && (!board.name().equals("830-split") || (hole.column() != 0 && hole.column() != 32));
    }
    return hole.column() <= board.columns();
  }

  private boolean touch(Hole one, Hole other) {
    if (one.board() != other.board() || one.rail() != other.rail()) {
      return false;
    }
    if (one.rail()) {
      return one.track().equals(other.track())
          && (!board.name().equals("830-split") || one.column() < 32 == other.column() < 32);
    }
    return one.column() == other.column()
        && one.track().compareTo("f") < 0 == other.track().compareTo("f") < 0;
  }
}
