package org.holewise.engine.quantity;

import java.util.OptionalDouble;

/**
 * What a letter code says. Immutable.
 *
 * @param value (Ω) or (F), as the unit says
 * @param tolerance the limit either way as a fraction, where a letter gives one
 */
public record CodedValue(double value, Unit unit, OptionalDouble tolerance) {}
