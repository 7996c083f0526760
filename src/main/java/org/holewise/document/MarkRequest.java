package org.holewise.document;

import java.util.List;
import java.util.Set;
import org.holewise.engine.board.Finding;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;

/**
 * One build to be marked. Immutable.
 *
 * @param record without the extra readings that cannot be used
 * @param findings what is odd about the record itself; they come before the mark's own
 * @param ask kinds of readings that may be asked for; empty for any
 */
public record MarkRequest(
    Exercise exercise, BenchRecord record, List<Finding> findings, Set<String> ask) {}
