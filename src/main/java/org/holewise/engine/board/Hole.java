package org.holewise.engine.board;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A hole as written: {@code e12}, {@code +j12}, {@code 2:e12}. Whether a board has it is not
 * checked here.
 *
 * @param board 1 for the first board
 * @param track a row {@code a} to {@code j}, or a rail {@code +a -a +j -j}
 * @param column from 1; 0 where a rail was named without a column
 */
public record Hole(int board, String track, int column) implements Comparable<Hole> {
  private static final Pattern WRITTEN =
      Pattern.compile(
          "(?:([1-9]):)?(?:([+-][aj])([1-9][0-9]{0,2})?|([a-j])-?([1-9][0-9]{0,2})|([1-9][0-9]{0,2})([a-j]))");

  /**
   * Reads a hole in any of the ways it may be written ({@code e12 12e E12 e-12 +j12 +j 2:e12});
   * empty where it is none. Columns run from 1 to 999 here; which of them a board has is its own
   * affair.
   */
  public static Optional<Hole> read(String text) {
    if (text.length() > 12) {
      return Optional.empty();
    }
    var m = WRITTEN.matcher(text.strip().toLowerCase(Locale.ROOT).replace('\u2212', '-'));
    if (!m.matches()) {
      return Optional.empty();
    }
    int board = m.group(1) == null ? 1 : Integer.parseInt(m.group(1));
    if (m.group(2) != null) {
      return Optional.of(
          new Hole(board, m.group(2), m.group(3) == null ? 0 : Integer.parseInt(m.group(3))));
    }
    return m.group(4) != null
        ? Optional.of(new Hole(board, m.group(4), Integer.parseInt(m.group(5))))
        : Optional.of(new Hole(board, m.group(7), Integer.parseInt(m.group(6))));
  }

  /** Whether it is in a rail. */
  public boolean rail() {
    return track.length() == 2;
  }

  /** By board, then column, then rails before rows. */
  @Override
  public int compareTo(Hole other) {
    int byBoard = Integer.compare(board, other.board);
    int byColumn = Integer.compare(column, other.column);
    int byTrack = track.compareTo(other.track);
    return byBoard != 0 ? byBoard : byColumn != 0 ? byColumn : byTrack;
  }

  @Override
  public String toString() {
    return (board == 1 ? "" : board + ":") + track + (column == 0 ? "" : column);
  }
}
