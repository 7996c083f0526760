package org.holewise.document.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Rail;

/** Which hole of a rail stands for one that was written. */
final class Rails {
  private Rails() {}

  /**
   * The column of the hole nearest to the written one on the same metal, a free one first; empty
   * where the written one lies in a gap or the board has no such rail.
   */
  static Optional<Integer> nearest(BoardModel model, Hole hole, IntPredicate free) {
    return model
        .rail(hole.track())
        .filter(rail -> rail.part(hole.column()) >= 0)
        .flatMap(
            rail ->
                joined(rail, hole.column()).stream()
                    .min(
                        Comparator.comparing((Integer column) -> !free.test(column))
                            .thenComparing(column -> Math.abs(column - hole.column()))
                            .thenComparing(column -> column)));
  }

  /** The columns of the rail's holes that are one metal with a column. */
  static List<Integer> joined(Rail rail, int column) {
    int part = rail.part(column);
    return rail.columns().stream().filter(other -> rail.part(other) == part).toList();
  }
}
