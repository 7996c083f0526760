package org.holewise.engine.board;

import java.util.List;
import java.util.Optional;

/** A build laid out: the board it is on, the parts placed, the links laid. Immutable. */
public record Build(BoardModel board, List<Placed> placed, List<Link> links) {
  public Build {
    placed = List.copyOf(placed);
    links = List.copyOf(links);
  }

  /** Where a part was put; the first time where it was put twice. */
  public Optional<Placed> placed(String ref) {
    return placed.stream().filter(part -> part.ref().equals(ref)).findFirst();
  }
}
