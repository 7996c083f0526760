package org.holewise.engine.part;

/**
 * One output of a source: a steady voltage between two of its pins.
 *
 * @param volts without load (V)
 */
public record Feed(String plus, String minus, double volts) {}
