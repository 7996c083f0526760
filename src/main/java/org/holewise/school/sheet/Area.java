package org.holewise.school.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.holewise.document.picture.Patch;
import org.holewise.document.text.Messages;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Hole;

/**
 * A part of the board around some holes, from one printed column number to another and across whole
 * groups of rows, so that it does not give the holes away.
 */
record Area(List<Patch> patches) {
  private static final int STEP = 5;

  /** What lies side by side across a board, from one edge to the other. */
  private enum Band {
    RAILS_A("rails-a", List.of("-a", "+a")),
    ROWS_A("rows-a", List.of("a", "b", "c", "d", "e")),
    ROWS_J("rows-j", List.of("f", "g", "h", "i", "j")),
    RAILS_J("rails-j", List.of("+j", "-j"));

    private final String key;
    private final List<String> tracks;

    Band(String key, List<String> tracks) {
      this.key = key;
      this.tracks = tracks;
    }
  }

  static Area around(List<Hole> holes, BoardModel model) {
    Map<Integer, List<Hole>> byBoard =
        holes.stream()
            .collect(Collectors.groupingBy(Hole::board, TreeMap::new, Collectors.toList()));
    var patches = new ArrayList<Patch>();
    byBoard.forEach((board, there) -> patches.addAll(patches(board, there, model)));
    return new Area(List.copyOf(patches));
  }

  /** One for each run of bands that lie side by side. */
  private static List<Patch> patches(int board, List<Hole> holes, BoardModel model) {
    var columns = holes.stream().mapToInt(Hole::column).filter(column -> column > 0);
    var span = columns.summaryStatistics();
    boolean anywhere = span.getCount() == 0;
    int first = anywhere ? 1 : Math.max(1, Math.floorDiv(span.getMin() - 1, STEP) * STEP);
    int last =
        anywhere
            ? model.columns()
            : Math.min(model.columns(), -Math.floorDiv(-span.getMax() - 1, STEP) * STEP);
    var patches = new ArrayList<Patch>();
    var run = new ArrayList<String>();
    for (Band band : Band.values()) {
      if (holes.stream().anyMatch(hole -> band.tracks.contains(hole.track()))) {
        run.addAll(band.tracks);
      } else if (!run.isEmpty()) {
        patches.add(new Patch(board, first, last, run));
        run.clear();
      }
    }
    if (!run.isEmpty()) {
      patches.add(new Patch(board, first, last, run));
    }
    return patches;
  }

  /** Where to look, in a sentence; empty where there is no such place. */
  Optional<String> said() {
    var boards = patches.stream().map(Patch::board).distinct().toList();
    return boards.isEmpty()
        ? Optional.empty()
        : Optional.of(
            boards.stream().map(board -> said(board, boards)).collect(Collectors.joining(" ")));
  }

  private String said(int board, List<Integer> boards) {
    var here = patches.stream().filter(patch -> patch.board() == board).toList();
    var tracks = here.stream().flatMap(patch -> patch.tracks().stream()).toList();
    var words =
        List.of(Band.values()).stream()
            .filter(band -> tracks.containsAll(band.tracks))
            .map(band -> Messages.english().say("hint.area." + band.key))
            .toList();
    boolean first = boards.equals(List.of(1));
    Patch patch = here.get(0);
    return Messages.english()
        .say(
            first ? "hint.area" : "hint.area.board",
            patch.first(),
            patch.last(),
            joined(words),
            board);
  }

  private static String joined(List<String> words) {
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : Messages.english()
            .say("list.and", String.join(", ", words.subList(0, last)), words.get(last));
  }
}
