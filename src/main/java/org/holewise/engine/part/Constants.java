package org.holewise.engine.part;

/**
 * Constants of nature, exact since the SI of 2019 (BIPM, The International System of Units, 9e).
 */
final class Constants {
  /** Boltzmann constant (J/K). */
  private static final double BOLTZMANN = 1.380649e-23;

  /** Elementary charge (C). */
  private static final double CHARGE = 1.602176634e-19;

  /** 0 °C (K). */
  private static final double ICE = 273.15;

  private Constants() {}

  /** Thermal voltage kT/q (V) at a temperature (°C). */
  static double thermalVolts(double celsius) {
    return BOLTZMANN * (celsius + ICE) / CHARGE;
  }
}
