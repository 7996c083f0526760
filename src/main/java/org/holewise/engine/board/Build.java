package org.holewise.engine.board;

import java.util.List;

/** A build laid out: the board it is on, the parts placed, the links laid. Immutable. */
public record Build(BoardModel board, List<Placed> placed, List<Link> links) {
  public Build {
    placed = List.copyOf(placed);
    links = List.copyOf(links);
  }
}
