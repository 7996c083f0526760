package org.holewise.engine.reading;

/** The normal distribution function, to 1.5e-7 (Abramowitz and Stegun, 7.1.26). */
final class NormalTail {
  private static final double[] A = {
    0.254829592, -0.284496736, 1.421413741, -1.453152027, 1.061405429
  };
  private static final double P = 0.3275911;

  private NormalTail() {}

  /** Probability that a normal value of this mean and deviation lies below {@code x}. */
  static double below(double x, double mean, double deviation) {
    if (x == Double.POSITIVE_INFINITY || x == Double.NEGATIVE_INFINITY) {
      return x > 0 ? 1 : 0;
    }
    double z = (x - mean) / deviation / Math.sqrt(2);
    double t = 1 / (1 + P * Math.abs(z));
    double sum = 0;
    for (int i = A.length - 1; i >= 0; i--) {
      sum = (sum + A[i]) * t;
    }
    double half = 0.5 * sum * StrictMath.exp(-z * z);
    return z >= 0 ? 1 - half : half;
  }
}
