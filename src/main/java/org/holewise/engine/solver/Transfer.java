package org.holewise.engine.solver;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.holewise.engine.part.Wave;

/**
 * What swings between two points while generators of one wave are turned, to first order.
 *
 * <p>Method: capacitances and inductances are few. With G the circuit at rest, U their places and W
 * their values, (G + jωUWUᵀ)⁻¹ follows from G⁻¹ and one small complex system a frequency (Woodbury
 * 1950): y = cᵀG⁻¹b − jω·cᵀG⁻¹U·W·(I + jω·UᵀG⁻¹U·W)⁻¹·UᵀG⁻¹b. Complex numbers are solved as pairs
 * of real ones.
 */
public final class Transfer {
  private final Wave wave;
  private final double direct;
  private final double[] into;
  private final double[] out;
  private final double[][] between;

  /**
   * @param direct cᵀG⁻¹b
   * @param into UᵀG⁻¹b
   * @param out cᵀG⁻¹UW
   * @param between UᵀG⁻¹UW
   */
  Transfer(Wave wave, double direct, double[] into, double[] out, double[][] between) {
    this.wave = wave;
    this.direct = direct;
    this.into = into;
    this.out = out;
    this.between = between;
  }

  public Wave wave() {
    return wave;
  }

  /** Its peak where the generators are set to a frequency (V). */
  public double peak(double hertz) {
    int n = into.length;
    double omega = 2 * Math.PI * hertz;
    var matrix = new DMatrixRMaj(2 * n, 2 * n);
    for (int i = 0; i < n; i++) {
      matrix.set(i, i, 1);
      matrix.set(i + n, i + n, 1);
      for (int j = 0; j < n; j++) {
        matrix.set(i, j + n, -omega * between[i][j]);
        matrix.set(i + n, j, omega * between[i][j]);
      }
    }
    double[] s = Arrays.copyOf(into, 2 * n);
    var factors = new Factors(2 * n);
    if (!factors.of(matrix)) {
      return 0;
    }
    factors.solve(s);
    double re = direct;
    double im = 0;
    for (int i = 0; i < n; i++) {
      re += omega * out[i] * s[i + n];
      im -= omega * out[i] * s[i];
    }
    return StrictMath.hypot(re, im);
  }
}
