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
  private static final double FIRST = -24;
  private static final double LAST = 32;
  private static final double LONGEST = 1;
  private static final double SHORTEST = 1e-9;
  private static final int STEPS = 6000;
  private static final int TURNS = 7;

  /** What is left after a corrector's last step is about its square (V). */
  private static final double SMALL = 1e-7;

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
    boolean ended = correct() && begin() && walk();
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
      for (int j = 0; j <= n; j++) {
        y[j] = good[j] + length * tangent[j];
      }
      if (correct() && near(good, length) && turn(false)) {
        System.arraycopy(y, 0, good, 0, y.length);
        length = Math.min(2 * length, LONGEST);
      } else {
        System.arraycopy(good, 0, y, 0, y.length);
        length /= 4;
      }
      if (y[n] >= LAST) {
        return true;
      }
      if (length < SHORTEST || y[n] < FIRST - 1) {
        return false;
      }
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
  private boolean correct() {
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
      if (most <= SMALL) {
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
