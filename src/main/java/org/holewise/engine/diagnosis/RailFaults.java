package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Rail;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.netlist.AsBuilt;

/** Rails that the record takes for one piece and that may be parted half-way (common practice). */
final class RailFaults {
  /** Shorter boards are not made with parted rails (common practice). */
  private static final int LONG = 60;

  private RailFaults() {}

  static List<Hypothesis> hiddenGaps(Scene scene) {
    return scene.layout().map(layout -> hiddenGaps(scene, layout)).orElse(List.of());
  }

  private static List<Hypothesis> hiddenGaps(Scene scene, Layout layout) {
    var all = new ArrayList<Hypothesis>();
    BoardModel board = layout.build().board();
    int gap = board.columns() / 2 + 1;
    for (Rail rail : board.rails()) {
      if (board.columns() < LONG || !rail.gaps().isEmpty()) {
        continue;
      }
      for (int number : boards(layout)) {
        if (!spans(layout, number, rail.track(), gap)) {
          continue;
        }
        AsBuilt parted =
            AsBuilt.of(
                new Build(
                    board.withGap(rail.track(), gap),
                    layout.build().placed(),
                    layout.build().links()),
                scene.exercise().parts());
        all.add(
            Hypothesis.of(
                Family.RAIL_GAP,
                new Place.OfRail(number, rail.track()),
                "rail-gap",
                1,
                List.of(
                    new Hole(number, rail.track(), gap - 1),
                    new Hole(number, rail.track(), gap + 1)),
                scene.record().on(parted.netlist(), parted::netAt)));
      }
    }
    return all;
  }

  private static TreeSet<Integer> boards(Layout layout) {
    var boards = new TreeSet<Integer>();
    layout.taken().forEach(hole -> boards.add(hole.board()));
    return boards;
  }

  private static boolean spans(Layout layout, int board, String track, int gap) {
    List<Hole> used =
        layout.taken().stream()
            .filter(hole -> hole.board() == board && hole.track().equals(track))
            .toList();
    return used.stream().anyMatch(hole -> hole.column() > 0 && hole.column() < gap)
        && used.stream().anyMatch(hole -> hole.column() > gap);
  }
}
