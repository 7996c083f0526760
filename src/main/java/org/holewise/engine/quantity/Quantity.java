package org.holewise.engine.quantity;

/**
 * A number with its unit. Immutable.
 *
 * @param value in the unit itself, without prefix (a fraction for {@link Unit#FRACTION})
 */
public record Quantity(double value, Unit unit) {}
