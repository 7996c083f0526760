package org.holewise.document.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Hole;

/**
 * The columns that are drawn of one board.
 *
 * @param board 1 for the first
 * @param u where its first column lies along the drawing (px)
 * @param of columns of the whole board
 */
public record Section(int board, int first, int last, double u, int of) {
  /** From the outermost drawn column to the edge: the letters of the rows stand there. */
  static final double EDGE = 32;

  private static final double BETWEEN = 12;
  private static final int MARGIN = 2;
  private static final int FEWEST = 13;

  /** Drawn side by side, from {@code u} on: the used columns with a margin, or all of them. */
  static List<Section> of(BoardModel model, Set<Hole> used, boolean whole, double u) {
    var boards = new TreeSet<Integer>(List.of(1));
    used.forEach(hole -> boards.add(hole.board()));
    var sections = new ArrayList<Section>();
    for (int board : boards) {
      var columns =
          used.stream().filter(hole -> hole.board() == board).mapToInt(Hole::column).toArray();
      int least = whole ? 1 : java.util.Arrays.stream(columns).min().orElse(1) - MARGIN;
      int most =
          whole ? model.columns() : java.util.Arrays.stream(columns).max().orElse(1) + MARGIN;
      int last = Math.min(model.columns(), Math.max(most, Math.max(1, least) + FEWEST - 1));
      int first = Math.max(1, Math.min(least, last - FEWEST + 1));
      var section = new Section(board, first, last, u + EDGE, model.columns());
      sections.add(section);
      u = section.to() + BETWEEN;
    }
    return sections;
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
