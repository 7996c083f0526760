package org.holewise.engine.reading;

import java.util.List;
import org.holewise.engine.quantity.Parameter;

/**
 * Variances of all that a forecast hangs on, and the covariances of forecasts that follow to first
 * order (JCGM 100, 5.2). Parts' true values and a meter's gain are shared by all readings; digits
 * are each reading's own. Immutable by convention.
 *
 * @param variances by parameter of the assembly
 */
public record Uncertainty(double[] variances, Meter meter) {

  public static Uncertainty of(List<Parameter> parameters, Meter meter) {
    double[] variances = new double[parameters.size()];
    for (int k = 0; k < variances.length; k++) {
      double deviation = parameters.get(k).deviation();
      variances[k] = deviation * deviation;
    }
    return new Uncertainty(variances, meter);
  }

  /** Covariance of two different readings. */
  public double covariance(Forecast one, Forecast other) {
    double sum = common(one, other);
    if (one.function() == other.function() && metered(one) && metered(other)) {
      double gain = meter.scale(one.function()).gain();
      sum += one.value() * other.value() * gain * gain / 3;
    }
    return sum;
  }

  /** Variance of a reading: all that it shares, and its own digits. */
  public double variance(Forecast forecast) {
    return covariance(forecast, forecast) + digits(forecast);
  }

  /** What the parts' spreads alone give. */
  private double common(Forecast one, Forecast other) {
    double sum = 0;
    for (int k = 0; k < variances.length; k++) {
      sum += one.slopes()[k] * other.slopes()[k] * variances[k];
    }
    return sum;
  }

  private double digits(Forecast forecast) {
    if (!metered(forecast) || Double.isInfinite(forecast.value())) {
      return 0;
    }
    double digits = meter.digits(forecast.function(), forecast.value());
    return (digits * digits + forecast.own() * forecast.own()) / 3;
  }

  private static boolean metered(Forecast forecast) {
    return forecast.sort() == Forecast.Sort.AMOUNT || forecast.sort() == Forecast.Sort.BUZZER;
  }
}
