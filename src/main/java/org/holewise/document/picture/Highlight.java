package org.holewise.document.picture;

import java.util.List;
import org.holewise.engine.board.Hole;

/**
 * What the drawing points at. Immutable.
 *
 * @param ringed holes with a ring round them: look here
 * @param dashed holes whose whole strip or rail has a dashed outline
 * @param patches parts of a board with an outline: look in here
 */
public record Highlight(List<Hole> ringed, List<Hole> dashed, List<Patch> patches) {
  public static final Highlight NONE = new Highlight(List.of(), List.of(), List.of());

  public Highlight {
    ringed = List.copyOf(ringed);
    dashed = List.copyOf(dashed);
    patches = List.copyOf(patches);
  }

  /** Rings these holes and outlines their strips. */
  public static Highlight of(List<Hole> holes) {
    return new Highlight(holes, holes, List.of());
  }

  /** Rings these holes and says nothing of their strips. */
  public static Highlight rings(List<Hole> holes) {
    return new Highlight(holes, List.of(), List.of());
  }

  /** Outlines parts of a board. */
  public static Highlight within(List<Patch> patches) {
    return new Highlight(List.of(), List.of(), patches);
  }
}
