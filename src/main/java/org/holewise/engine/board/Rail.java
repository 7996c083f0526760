package org.holewise.engine.board;

import java.util.List;

/**
 * One rail of a board model.
 *
 * @param track {@code +a -a +j -j}
 * @param columns the columns beside which it has holes, ascending
 * @param gaps columns at which it is interrupted: a gap at 32 parts 31 from 33
 */
public record Rail(String track, List<Integer> columns, List<Integer> gaps) {}
