package org.holewise.engine.solver;

/**
 * What a number does while a circuit's own clock runs, from pulse to pulse until everything comes
 * again.
 *
 * @param hertz how often it rises through its middle (Hz)
 * @param mean over time
 */
public record Cycle(double hertz, double least, double most, double mean) {}
