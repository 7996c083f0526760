package org.holewise.engine.board;

/** A piece of wire between two holes. */
public record Link(Hole from, Hole to) {
  public Hole end(int end) {
    return end == 0 ? from : to;
  }

  public Link with(int end, Hole hole) {
    return end == 0 ? new Link(hole, to) : new Link(from, hole);
  }
}
