package org.holewise.engine.diagnosis;

import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.reading.Shown;

/**
 * One reading that was taken and understood, an exercise's own or one that was asked for.
 *
 * @param coarser how much further than on its best range its digits may be off (SI)
 */
public record Observation(
    String id, Measure measure, Condition condition, Shown shown, double coarser) {}
