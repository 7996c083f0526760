package org.holewise.engine.solver;

import org.ejml.data.DMatrixRMaj;

/**
 * Whether what amplifies would stay where a search has put it. Feedback that drives an output away
 * turns the sign of the Jacobian's determinant against that of the same circuit without gain, since
 * an odd number of its modes then grow (Green and Willson 1992, IEEE Transactions on Circuits and
 * Systems I 39(11)).
 */
final class Amplifiers {
  private final Equations equations;

  Amplifiers(Elements elements, Nodes nodes) {
    equations = new Equations(elements, nodes);
  }

  static boolean any(Elements elements) {
    return elements.laws.stream().anyMatch(law -> law.device.amplifies());
  }

  /** Whether the point stays where it is; so it is called where rounding leaves no sign. */
  boolean stays(double[] x) {
    equations.assemble(x);
    var with = new Factors(equations.n);
    if (!with.of(new DMatrixRMaj(equations.matrix))) {
      return true;
    }
    withoutGain(x);
    var without = new Factors(equations.n);
    return !without.of(new DMatrixRMaj(equations.matrix)) || with.negative() == without.negative();
  }

  /** Assembles the matrix with no output answering to its inputs. */
  private void withoutGain(double[] x) {
    var kept = equations.elements.laws.stream().map(law -> law.dv.clone()).toList();
    for (Elements.Law law : equations.elements.laws) {
      int n = law.spots.length;
      for (int t = 0; law.device.amplifies() && t < n; t++) {
        if (!law.device.draws(t)) {
          for (int s = 0; s < n; s++) {
            law.dv[s * n + t] = 0;
          }
        }
      }
    }
    equations.assemble(x);
    for (int k = 0; k < kept.size(); k++) {
      System.arraycopy(kept.get(k), 0, equations.elements.laws.get(k).dv, 0, kept.get(k).length);
    }
  }
}
