package org.holewise.engine.board;

import java.util.List;
import java.util.stream.IntStream;

/**
 * One rail of a board model. Immutable.
 *
 * @param track {@code +a -a +j -j}
 * @param columns the columns beside which it has holes, ascending
 * @param gaps columns at which it is interrupted, ascending: a gap at 32 parts 31 from 33
 */
public record Rail(String track, List<Integer> columns, List<Integer> gaps) {
  public Rail {
    columns = List.copyOf(columns);
    gaps = List.copyOf(gaps);
  }

  /** The same rail interrupted at one more column. */
  Rail withGap(int column) {
    return new Rail(
        track,
        columns,
        IntStream.concat(gaps.stream().mapToInt(Integer::intValue), IntStream.of(column))
            .sorted()
            .boxed()
            .toList());
  }

  /** How many pieces of metal it is. */
  public int parts() {
    return gaps.size() + 1;
  }

  /**
   * Which of its parts lies beside a column, from 0; -1 at a gap, and for column 0 (a rail named
   * without a column) where it has more than one part.
   */
  public int part(int column) {
    if (gaps.contains(column) || (column == 0 && parts() > 1)) {
      return -1;
    }
    int part = 0;
    while (part < gaps.size() && gaps.get(part) < column) {
      part++;
    }
    return part;
  }
}
