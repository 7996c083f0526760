package org.holewise.engine.part;

/**
 * How an output drives its pin: a device from the plus pin when high, one to the minus pin when
 * low, each with the terminals rail and pin.
 */
public record Driver(int pin, Device high, Device low) {}
