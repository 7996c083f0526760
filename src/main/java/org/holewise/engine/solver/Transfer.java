package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.holewise.engine.part.Wave;

/**
 * What swings between two points while generators of one wave are turned, to first order.
 *
 * <p>Method: capacitances and inductances are few. With A the circuit at a frequency in the middle
 * of the dial, U their places, W their values and δ the distance from it, (A + jδUWUᵀ)⁻¹ follows
 * from A⁻¹ and one small complex system a frequency (Woodbury 1950): y = cᵀA⁻¹b − jδ·cᵀA⁻¹U·W·(I +
 * jδ·UᵀA⁻¹U·W)⁻¹·UᵀA⁻¹b. About the middle, not about rest, since what hangs on capacitances alone
 * has no rest that can be told. Complex numbers are pairs of real ones.
 */
public final class Transfer {
  /** Between 0.1 Hz and 100 MHz, by the logarithm (rad/s). */
  static final double MIDDLE = 2 * Math.PI * 3162;

  private final Wave wave;

  /** cᵀA⁻¹b. */
  private final double[] direct;

  /** UᵀA⁻¹b, real parts first, as in all of these. */
  private final double[] into;

  /** cᵀA⁻¹UW. */
  private final double[] out;

  /** UᵀA⁻¹UW by column. */
  private final double[][] between;

  /** A capacitance or inductance: its row of Uᵀ, and its value. */
  @SuppressWarnings("ArrayRecordComponent")
  private record Store(double[] place, double value) {}

  /**
   * The voltage between two spots over the frequency of the generators of one wave.
   *
   * @param about the circuit at {@link #MIDDLE}
   */
  Transfer(ComplexEquations about, Wave wave, int plus, int minus) {
    this.wave = wave;
    double[] b = drive(about, wave);
    about.solve(b);
    double[] c = about.between(plus, minus);
    direct = new double[2];
    put(direct, 0, 1, c, b);
    List<Store> stores = stores(about);
    int n = stores.size();
    into = new double[2 * n];
    out = new double[2 * n];
    between = new double[n][2 * n];
    for (int j = 0; j < n; j++) {
      double[] solved = stores.get(j).place().clone();
      about.solve(solved);
      put(into, j, 1, stores.get(j).place(), b);
      put(out, j, stores.get(j).value(), c, solved);
      for (int i = 0; i < n; i++) {
        put(between[j], i, stores.get(j).value(), stores.get(i).place(), solved);
      }
    }
  }

  private static double[] drive(ComplexEquations about, Wave wave) {
    double[] b = new double[about.n];
    List<Elements.Source> sources = about.equations.elements.sources;
    for (int k = 0; k < sources.size(); k++) {
      Elements.Source source = sources.get(k);
      if (source.swing.isPresent() && source.swing.get().wave() == wave) {
        b[about.row(k)] = source.sign * source.swing.get().peak();
      }
    }
    return b;
  }

  private static List<Store> stores(ComplexEquations about) {
    var stores = new ArrayList<Store>();
    Elements elements = about.equations.elements;
    for (Elements.Capacitance c : elements.capacitances) {
      stores.add(new Store(about.between(c.a(), c.b()), c.farads()));
    }
    for (int k = 0; k < elements.sources.size(); k++) {
      if (elements.sources.get(k).henries > 0) {
        double[] place = new double[about.n];
        place[about.row(k)] = 1;
        stores.add(new Store(place, -elements.sources.get(k).henries));
      }
    }
    return stores;
  }

  /** Puts the product of a real row and a complex column, times a scale, into one place. */
  private static void put(double[] of, int place, double scale, double[] row, double[] column) {
    int half = row.length / 2;
    for (int k = 0; k < half; k++) {
      of[place] += scale * row[k] * column[k];
      of[place + of.length / 2] += scale * row[k] * column[k + half];
    }
  }

  public Wave wave() {
    return wave;
  }

  /** Its peak where the generators are set to a frequency (V). */
  public double peak(double hertz) {
    int n = between.length;
    double delta = 2 * Math.PI * hertz - MIDDLE;
    double[] s = Arrays.copyOf(into, 2 * n);
    var factors = new Factors(2 * n);
    if (!factors.of(turned(delta))) {
      return 0;
    }
    factors.solve(s);
    double re = direct[0];
    double im = direct[1];
    for (int i = 0; i < n; i++) {
      re += delta * (out[i] * s[i + n] + out[i + n] * s[i]);
      im -= delta * (out[i] * s[i] - out[i + n] * s[i + n]);
    }
    return StrictMath.hypot(re, im);
  }

  /** I + jδ·UᵀA⁻¹U·W as [re, −im; im, re]. */
  private DMatrixRMaj turned(double delta) {
    int n = between.length;
    var matrix = new DMatrixRMaj(2 * n, 2 * n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double re = (i == j ? 1 : 0) - delta * between[j][i + n];
        double im = delta * between[j][i];
        matrix.set(i, j, re);
        matrix.set(i + n, j + n, re);
        matrix.set(i, j + n, -im);
        matrix.set(i + n, j, im);
      }
    }
    return matrix;
  }
}
