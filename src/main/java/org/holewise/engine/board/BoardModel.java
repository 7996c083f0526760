package org.holewise.engine.board;

import java.util.List;

/**
 * A model of board: what joins what under the plastic. Strips are numbered from 0: for each board
 * in turn the columns' halves (a–e of column 1, f–j of column 1, a–e of column 2 …), then each part
 * of each rail. Immutable.
 *
 * @param name such as {@code 830-split}
 */
public record BoardModel(String name, int columns, List<Rail> rails) {
  public BoardModel {
    rails = List.copyOf(rails);
  }
}
