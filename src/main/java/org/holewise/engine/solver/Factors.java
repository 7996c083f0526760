package org.holewise.engine.solver;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.lu.LUDecompositionAlt_DDRM;

/**
 * Triangular factors of a square matrix whose rows differ by many orders of magnitude: every row is
 * first divided by its largest entry, so that pivots are chosen by what they are worth in their own
 * equation (Golub and Van Loan, Matrix Computations 4e, 3.5.2). Solves with the matrix and with its
 * transpose.
 */
final class Factors {
  /**
   * Least pivot of the scaled matrix. One that cancels to nothing leaves about 1e-16 times the
   * size; 1 GΩ beside a metre of 1 mΩ leaves 1e-12.
   */
  private static final double LEAST_PIVOT = 2e-15;

  private final int n;
  private final double[] scale;
  private double weakest = 1;
  private final LUDecompositionAlt_DDRM lu = new LUDecompositionAlt_DDRM();

  Factors(int n) {
    this.n = n;
    scale = new double[n];
  }

  /**
   * Takes a matrix, which is overwritten with the scaled one.
   *
   * @return whether it is regular
   */
  boolean of(DMatrixRMaj matrix) {
    double[] a = matrix.data;
    for (int row = 0; row < n; row++) {
      double largest = 0;
      for (int k = row * n; k < (row + 1) * n; k++) {
        largest = Math.max(largest, Math.abs(a[k]));
      }
      if (!(largest > 0 && largest <= Double.MAX_VALUE)) {
        return false;
      }
      scale[row] = 1 / largest;
      for (int k = row * n; k < (row + 1) * n; k++) {
        a[k] *= scale[row];
      }
    }
    return n == 0 || lu.decompose(matrix) && pivots();
  }

  private boolean pivots() {
    double[] a = lu.getLU().data;
    int[] pivot = lu.getPivot();
    weakest = Double.MAX_VALUE;
    for (int k = 0; k < n; k++) {
      double size = Math.abs(a[k * n + k]);
      if (!(size > LEAST_PIVOT)) {
        return false;
      }
      weakest = Math.min(weakest, size / scale[pivot[k]]);
    }
    return true;
  }

  /** Whether the determinant is below zero. */
  boolean negative() {
    int[] pivot = lu.getPivot().clone();
    boolean negative = false;
    for (int k = 0; k < n; k++) {
      negative ^= lu.getLU().data[k * n + k] < 0;
      while (pivot[k] != k) {
        int other = pivot[k];
        pivot[k] = pivot[other];
        pivot[other] = other;
        negative = !negative;
      }
    }
    return negative;
  }

  /** The smallest pivot, in the unit of its row. */
  double weakest() {
    return weakest;
  }

  /** Replaces a right-hand side by the solution. */
  void solve(double[] b) {
    for (int row = 0; row < n; row++) {
      b[row] *= scale[row];
    }
    if (n > 0) {
      lu._solveVectorInternal(b);
    }
  }

  /** Solution for the transposed matrix: Uᵀ·z = c, Lᵀ·w = z, rows back in their places. */
  double[] solveTransposed(double[] c) {
    if (n == 0) {
      return new double[0];
    }
    double[] a = lu.getLU().data;
    double[] z = Arrays.copyOf(c, n);
    for (int k = 0; k < n; k++) {
      for (int j = 0; j < k; j++) {
        z[k] -= a[j * n + k] * z[j];
      }
      z[k] /= a[k * n + k];
    }
    for (int k = n - 1; k >= 0; k--) {
      for (int j = k + 1; j < n; j++) {
        z[k] -= a[j * n + k] * z[j];
      }
    }
    double[] x = new double[n];
    int[] pivot = lu.getPivot();
    for (int k = 0; k < n; k++) {
      x[pivot[k]] = z[k] * scale[pivot[k]];
    }
    return x;
  }
}
