package org.holewise.engine.solver;

/**
 * A value of an operating point and how it answers to small changes.
 *
 * @param value in V or A
 * @param ohms resistance seen between the two points (Ω); 0 for a current
 * @param slopes d(value)/d(parameter) for every one of {@link Circuit#parameters()}, in SI units;
 *     the array belongs to the caller
 */
@SuppressWarnings("ArrayRecordComponent")
public record Response(double value, double ohms, double[] slopes) {}
