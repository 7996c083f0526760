package org.holewise.engine.exercise;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.board.Build;

/**
 * What a bench recorded: its layout, its readings, and what it was asked to measure besides.
 *
 * @param exercise slug as written, empty where it was left out
 * @param meter name of the meter model; the exercise's where it was left out
 * @param build empty where no layout was entered
 * @param readings by id, in the order written; ids the exercise lacks included
 */
public record BenchRecord(
    String exercise,
    String meter,
    Optional<Build> build,
    Map<String, Written> readings,
    List<Extra> extra) {}
