package org.holewise.engine.quantity;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A colour of a resistor's band (IEC 60062), in the order of the figures. Editions of the standard
 * differ on orange, yellow and grey as a tolerance, so these three have none here; {@link #NONE} is
 * the bare place of a missing tolerance band.
 */
public enum Colour {
  BLACK(0, 0, 250),
  BROWN(1, 0.01, 100),
  RED(2, 0.02, 50),
  ORANGE(3, 0, 15),
  YELLOW(4, 0, 25),
  GREEN(5, 0.005, 20),
  BLUE(6, 0.0025, 10),
  VIOLET(7, 0.001, 5),
  GREY(8, 0, 1),
  WHITE(9, 0, 0),
  GOLD(-1, 0.05, 0),
  SILVER(-2, 0.1, 0),
  NONE(-3, 0.2, 0);

  private final int power;
  private final double tolerance;
  private final int ppm;

  /** Zero stands for a meaning that the colour does not have. */
  Colour(int power, double tolerance, int ppm) {
    this.power = power;
    this.tolerance = tolerance;
    this.ppm = ppm;
  }

  /** The figure that it stands for; black to white only. */
  public OptionalInt figure() {
    return power >= 0 ? OptionalInt.of(power) : OptionalInt.empty();
  }

  /** The power of ten that it stands for as a multiplier; every colour but {@link #NONE}. */
  public OptionalInt multiplier() {
    return this == NONE ? OptionalInt.empty() : OptionalInt.of(power);
  }

  /** The limit either way that it stands for, as a fraction. */
  public OptionalDouble tolerance() {
    return tolerance > 0 ? OptionalDouble.of(tolerance) : OptionalDouble.empty();
  }

  /** The temperature coefficient that it stands for as a sixth band (ppm/K). */
  public OptionalInt temperatureCoefficient() {
    return ppm > 0 ? OptionalInt.of(ppm) : OptionalInt.empty();
  }
}
