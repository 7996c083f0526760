package org.holewise.engine.solver;

import java.util.ArrayList;
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

  /**
   * The voltage between two spots over the frequency of the generators of one wave.
   *
   * @param factors of the circuit at rest
   */
  static Transfer of(Equations plain, Factors factors, Wave wave, int plus, int minus) {
    Elements elements = plain.elements;
    double[] b = new double[plain.n];
    for (int k = 0; k < elements.sources.size(); k++) {
      Elements.Source source = elements.sources.get(k);
      if (source.swing.isPresent() && source.swing.get().wave() == wave) {
        b[plain.nodes.count + k] = source.sign * source.swing.get().peak();
      }
    }
    factors.solve(b);
    var places = new ArrayList<double[]>();
    var values = new ArrayList<Double>();
    for (Elements.Capacitance c : elements.capacitances) {
      places.add(between(plain, c.a(), c.b()));
      values.add(c.farads());
    }
    for (int k = 0; k < elements.sources.size(); k++) {
      if (elements.sources.get(k).henries > 0) {
        double[] place = new double[plain.n];
        place[plain.nodes.count + k] = 1;
        places.add(place);
        values.add(-elements.sources.get(k).henries);
      }
    }
    double[] c = between(plain, plus, minus);
    int n = places.size();
    double[] into = new double[n];
    double[] out = new double[n];
    double[][] across = new double[n][n];
    for (int j = 0; j < n; j++) {
      double[] solved = places.get(j).clone();
      factors.solve(solved);
      into[j] = dot(places.get(j), b);
      out[j] = values.get(j) * dot(c, solved);
      for (int i = 0; i < n; i++) {
        across[i][j] = values.get(j) * dot(places.get(i), solved);
      }
    }
    return new Transfer(wave, dot(c, b), into, out, across);
  }

  private static double[] between(Equations plain, int plus, int minus) {
    double[] c = new double[plain.n];
    int one = plain.nodes.at(plus);
    int other = plain.nodes.at(minus);
    if (one >= 0) {
      c[one] += 1;
    }
    if (other >= 0) {
      c[other] -= 1;
    }
    return c;
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int k = 0; k < one.length; k++) {
      sum += one[k] * other[k];
    }
    return sum;
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
