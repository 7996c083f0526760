package org.holewise.engine.solver;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;

/**
 * A way to a solution that may turn back. A conductance g pulls every node to an anchor; where it
 * is large the solution is the anchors, and it leads on to one of the true circuit as g goes to
 * nothing, but not always downwards: where the path folds, g has to rise again before it falls
 * (Melville, Trajković, Fang and Watson 1993, IEEE Transactions on Computer-Aided Design 12(6)).
 *
 * <p>Method: the path of node voltages and s = −ln g is followed along its own length by a step
 * along the tangent, then Newton's method in the plane across it (Keller 1977, Applications of
 * Bifurcation Theory). Which of its two ways the tangent points follows from the sign of the
 * determinant of both together, which stays the same along a path (Allgower and Georg 1990,
 * Numerical Continuation Methods, 2.1), also round the corners of devices. The unknowns are plain
 * node voltages and the currents of sources; the length is that of the voltages (V) and of s.
 */
final class Homotopy {
  /** Where the path begins: 3e10 S, which is more than the gain of any output (1e8 S). */
  private static final double FIRST = -24;

  /** Where it ends: 1e-14 S, less than what the devices themselves leak. */
  private static final double LAST = 32;

  /** Steps along the path: a volt, and down to what is left of the bend of a gain of 1e7. */
  private static final double LONGEST = 1;

  private static final double SHORTEST = 1e-10;

  /** So far beyond a corner another piece of the path is sought. */
  private static final double FARTHEST = 1e-2;

  /** Paths that were followed to their ends took some hundreds, at most 3000. */
  private static final int STEPS = 6000;

  private static final int TURNS = 7;

  /** A corrector's last step, as a share of the step that it corrects; and what rounding leaves. */
  private static final double SMALL = 1e-6;

  private static final double LEAST = 1e-13;

  private final Equations equations;
  private final int n;
  private final int nodes;
  private final Factors factors;
  private final DMatrixRMaj matrix;
  private final double[] y;
  private final double[] tangent;
  private final double[] step;
  private boolean negative;

  Homotopy(Equations equations) {
    this.equations = equations;
    n = equations.n;
    nodes = equations.nodes.count;
    factors = new Factors(n + 1);
    matrix = new DMatrixRMaj(n + 1, n + 1);
    y = new double[n + 1];
    tangent = new double[n + 1];
    step = new double[n + 1];
  }

  /**
   * From the anchors of the equations to where their pull is gone; x becomes a point that is all
   * but a solution.
   *
   * @return whether the path came to its end
   */
  boolean follow(double[] x) {
    Arrays.fill(y, 0);
    System.arraycopy(equations.anchor, 0, y, 0, nodes);
    y[n] = FIRST;
    Arrays.fill(tangent, 0);
    tangent[n] = 1;
    equations.alongStar();
    boolean ended = correct(LONGEST) && begin() && walk();
    System.arraycopy(y, 0, x, 0, n);
    equations.shunt = 0;
    return ended;
  }

  private boolean begin() {
    return assemble() && turn(true);
  }

  private boolean walk() {
    double[] good = y.clone();
    double length = LONGEST / 4;
    for (int k = 0; k < STEPS; k++) {
      ahead(good, length);
      if (correct(length) && near(good, length) && turn(false)) {
        System.arraycopy(y, 0, good, 0, y.length);
        length = Math.min(2 * length, LONGEST);
      } else if (length > SHORTEST) {
        length /= 4;
      } else if (!roundCorner(good)) {
        return false;
      }
      if (good[n] >= LAST || good[n] < FIRST - 1) {
        System.arraycopy(good, 0, y, 0, y.length);
        return good[n] >= LAST;
      }
    }
    return false;
  }

  private void ahead(double[] good, double length) {
    for (int k = 0; k <= n; k++) {
      y[k] = good[k] + length * tangent[k];
    }
  }

  /**
   * Where a device has a corner the path may turn back sharply, so that nothing of it lies ahead.
   * Its tangent is then that of a point beyond the corner.
   */
  private boolean roundCorner(double[] good) {
    double[] before = tangent.clone();
    for (double length = SHORTEST; length < FARTHEST; length *= 4) {
      ahead(good, length);
      if (assemble() && turn(false)) {
        ahead(good, length);
        if (correct(length) && near(good, length) && turn(false)) {
          System.arraycopy(y, 0, good, 0, y.length);
          return true;
        }
      }
      System.arraycopy(before, 0, tangent, 0, tangent.length);
    }
    return false;
  }

  /** Whether a corrector stayed by its prediction, and did not slip to another path. */
  private boolean near(double[] good, double length) {
    double off = 0;
    for (int j = 0; j <= n; j++) {
      if (j < nodes || j == n) {
        off = Math.max(off, Math.abs(y[j] - good[j] - length * tangent[j]));
      }
    }
    return off <= length / 2;
  }

  /** Newton's method across the tangent. */
  private boolean correct(double length) {
    for (int turn = 0; turn < TURNS; turn++) {
      if (!assemble()) {
        return false;
      }
      for (int k = 0; k < n; k++) {
        step[k] = -equations.residual[k];
      }
      step[n] = 0;
      factors.solve(step);
      double most = Math.abs(step[n]);
      for (int k = 0; k <= n; k++) {
        y[k] += step[k];
        if (k < nodes) {
          most = Math.max(most, Math.abs(step[k]));
        }
      }
      if (!(most < 1e6)) {
        return false;
      }
      if (most <= Math.max(LEAST, SMALL * length)) {
        return assemble();
      }
    }
    return false;
  }

  /** Fills and factors the matrix at y: the equations' own, how they follow s, and the tangent. */
  private boolean assemble() {
    double g = StrictMath.exp(-y[n]);
    equations.shunt = g;
    for (Elements.Law law : equations.elements.laws) {
      for (int t = 0; t < law.v.length; t++) {
        law.v[t] = equations.volts(y, law.spots[t]);
      }
      law.evaluate();
    }
    equations.assemble(y);
    for (int row = 0; row < n; row++) {
      System.arraycopy(equations.matrix.data, row * n, matrix.data, row * (n + 1), n);
      matrix.data[row * (n + 1) + n] = row < nodes ? -g * (y[row] - equations.anchor[row]) : 0;
    }
    for (int k = 0; k <= n; k++) {
      matrix.data[n * (n + 1) + k] = k < nodes || k == n ? tangent[k] : 0;
    }
    return factors.of(matrix);
  }

  /** Turns the tangent to that of the path at y, for which the matrix was factored. */
  private boolean turn(boolean first) {
    if (first) {
      negative = factors.negative();
    }
    Arrays.fill(step, 0);
    step[n] = 1;
    factors.solve(step);
    double square = 0;
    for (int k = 0; k <= n; k++) {
      square += k < nodes || k == n ? step[k] * step[k] : 0;
    }
    double scale = (factors.negative() == negative ? 1 : -1) / Math.sqrt(square);
    for (int k = 0; k <= n; k++) {
      tangent[k] = scale * step[k];
    }
    return square > 0 && square <= Double.MAX_VALUE;
  }
}
