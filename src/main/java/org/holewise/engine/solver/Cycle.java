package org.holewise.engine.solver;

/**
 * What a number does while a circuit's own clock runs, from pulse to pulse until everything comes
 * again.
 *
 * @param hertz how often it rises through its middle (Hz)
 * @param rises how often it does so in one period of the clock
 * @param mean over time
 */
public record Cycle(double hertz, double rises, double least, double most, double mean) {}
