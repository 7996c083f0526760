package org.holewise.document.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Hole;

/**
 * A run of columns that is drawn of one board.
 *
 * @param board 1 for the first
 * @param u where its first column lies along the drawing (px)
 * @param of columns of the whole board
 */
public record Section(int board, int first, int last, double u, int of) {
  /** From the outermost drawn column to the edge: the letters of the rows stand there. */
  static final double EDGE = 32;

  private static final double BETWEEN = 8;
  private static final int MARGIN = 2;
  private static final int FEWEST = 13;

  /** Runs that lie closer than this are drawn as one: a break would save nothing. */
  private static final int NEAR = 5;

  private record Run(int first, int last) {}

  /**
   * Drawn side by side, from {@code u} on: all columns, or the used ones with a margin, long unused
   * stretches left out.
   */
  static List<Section> of(BoardModel model, Set<Hole> used, boolean whole, double u) {
    var boards = new TreeSet<Integer>(List.of(1));
    used.forEach(hole -> boards.add(hole.board()));
    var sections = new ArrayList<Section>();
    for (int board : boards) {
      var columns = new TreeSet<Integer>();
      used.stream().filter(hole -> hole.board() == board).forEach(h -> columns.add(h.column()));
      var all = List.of(new Run(1, model.columns()));
      for (Run run : whole ? all : runs(columns, model.columns())) {
        var section = new Section(board, run.first(), run.last(), u + EDGE, model.columns());
        sections.add(section);
        u = section.to() + BETWEEN;
      }
    }
    return sections;
  }

  private static List<Run> runs(TreeSet<Integer> used, int columns) {
    var runs = new ArrayList<Run>();
    for (int column : used) {
      int first = Math.max(1, column - MARGIN);
      int last = Math.min(columns, column + MARGIN);
      int before = runs.size() - 1;
      if (before >= 0 && first - runs.get(before).last() <= NEAR) {
        runs.set(before, new Run(runs.get(before).first(), last));
      } else {
        runs.add(new Run(first, last));
      }
    }
    if (runs.isEmpty()) {
      runs.add(new Run(1, 1));
    }
    return runs.size() == 1 ? List.of(atLeast(runs.get(0), columns)) : runs;
  }

  private static Run atLeast(Run run, int columns) {
    int last = Math.min(columns, Math.max(run.last(), run.first() + FEWEST - 1));
    return new Run(Math.max(1, Math.min(run.first(), last - FEWEST + 1)), last);
  }

  double at(int column) {
    return u + (column - first) * Tracks.PITCH;
  }

  boolean shows(int column) {
    return column >= first && column <= last;
  }

  double from() {
    return u - EDGE;
  }

  double to() {
    return at(last) + EDGE;
  }

  /** Whether the board goes on before the first column drawn. */
  public boolean cutBefore() {
    return first > 1;
  }

  /** Whether the board goes on after the last column drawn. */
  public boolean cutAfter() {
    return last < of;
  }
}
