package org.holewise.engine.quantity;

import java.util.OptionalInt;

/**
 * A resistor as its bands say. Immutable.
 *
 * @param ohms nominal value (Ω)
 * @param tolerance limit either way, as a fraction
 * @param ppmPerKelvin temperature coefficient (ppm/K), given by a sixth band only
 */
public record CodedResistor(double ohms, double tolerance, OptionalInt ppmPerKelvin)
    implements ColourReading {}
