package org.holewise.school.bench;

import java.util.Optional;
import org.holewise.engine.marking.Points;
import org.holewise.school.sheet.Moment;

/**
 * One hand-in of a bench as its students see it in a list.
 *
 * @param state marking, marked or released
 * @param points once they are released
 */
record Attempt(int number, Moment at, String state, Optional<Points> points) {}
