package org.holewise.school.handin;

import java.time.Instant;

/**
 * A reading that was taken because it was asked for.
 *
 * @param number counts the answers to a hand-in's mark, from 1
 * @param line as typed after {@code extra}, such as {@code volts R1.2 f13 0.4 V}
 */
public record Answer(int number, String line, Instant at) {}
