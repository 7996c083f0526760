package org.holewise.engine.quantity;

/**
 * An uncertain number of a circuit or a meter: the one object that bands, diagnosis and draws are
 * fed by, so that all three mean the same spread. Immutable.
 *
 * @param name identifies it within its circuit, such as {@code R1.ohms}; the same name is the same
 *     true value
 * @param nominal the value that it should have, in SI units; finite
 * @param spread how true values lie about it, in the same unit
 */
public record Parameter(String name, double nominal, Spread spread) {

  public Parameter {
    if (!Double.isFinite(nominal)) {
      throw new IllegalArgumentException(name + " is not finite: " + nominal);
    }
  }

  /** One that is known exactly. */
  public static Parameter exact(String name, double value) {
    return new Parameter(name, value, new Spread.Exact());
  }

  /** One with a tolerance: uniform within that fraction of the nominal value either way. */
  public static Parameter within(String name, double nominal, double tolerance) {
    return new Parameter(name, nominal, new Spread.Limit(Math.abs(nominal) * tolerance));
  }

  /** The same name and spread about another value; a limit or deviation in units stays as it is. */
  public Parameter withNominal(double value) {
    return new Parameter(name, value, spread);
  }

  /** Standard deviation, in the unit of the nominal value. */
  public double deviation() {
    return spread.deviation(nominal);
  }

  /** Worst case downwards, in the unit of the nominal value. */
  public double low() {
    return spread.low(nominal);
  }

  /** Worst case upwards, in the unit of the nominal value. */
  public double high() {
    return spread.high(nominal);
  }

  /** The true value at probability u inside (0, 1), in the unit of the nominal value. */
  public double at(double u) {
    return spread.at(nominal, u);
  }
}
