package org.holewise.school.handin;

import java.time.Instant;
import org.holewise.engine.marking.Points;

/**
 * A mark as it was kept. Immutable.
 *
 * @param answers how many answers to asked readings it takes into account
 * @param document the mark document, teacher's view
 */
public record MarkRow(
    int answers, String engine, String priors, String document, Points points, Instant at) {}
