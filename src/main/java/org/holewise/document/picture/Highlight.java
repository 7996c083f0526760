package org.holewise.document.picture;

import java.util.List;
import org.holewise.engine.board.Hole;

/**
 * What the drawing points at. Immutable.
 *
 * @param ringed holes with a ring round them: look here
 * @param dashed holes whose whole strip or rail has a dashed outline
 */
public record Highlight(List<Hole> ringed, List<Hole> dashed) {
  public static final Highlight NONE = new Highlight(List.of(), List.of());

  public Highlight {
    ringed = List.copyOf(ringed);
    dashed = List.copyOf(dashed);
  }

  /** Rings these holes and outlines their strips. */
  public static Highlight of(List<Hole> holes) {
    return new Highlight(holes, holes);
  }
}
