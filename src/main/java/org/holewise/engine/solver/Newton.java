package org.holewise.engine.solver;

import org.ejml.data.DMatrixRMaj;

/**
 * Newton's method on the equations of one circuit.
 *
 * <p>Method: each turn evaluates every device, at its nodes' voltages or where {@link
 * org.holewise.engine.part.Device#limit} holds it back (Nagel 1975, SPICE2, UCB/ERL M520), solves
 * the linearised equations for a step and takes it whole. A source with a current limit is in one
 * of two states ({@link Limits}), which may change after each step. Unknowns are plain node
 * voltages as long as the matrix tells them closely enough, else those of the strongest {@link
 * Tree}, which is chosen anew each turn.
 *
 * <p>Invariants: a search ends well only where no device was held back and no source changed its
 * state in the last turn, and either the last step was so small that the next would be lost in
 * rounding, as steps shrink quadratically, and rounding leaves no voltage open; or, where that is
 * enough ({@link #met}), every equation holds to rounding. The factors kept are those of the matrix
 * at that point.
 */
final class Newton {
  /** The error after a step is about its square over a tenth of a volt: 1e-17 V. */
  private static final double SMALL_STEP = 1e-9;

  /** An equation holds where its terms cancel to this share of their sizes. */
  private static final double ROUNDING = 2e-15;

  /**
   * An equation that only a source's current enters without bound follows where the others hold,
   * one step later; to this share it has.
   */
  private static final double FOLLOWING = 1e-9;

  /** Nodes that move less no longer need their devices to be held back (V). */
  private static final double SETTLED = 1e-6;

  /** Voltages that rounding leaves open by more than this are not found, only met (V). */
  private static final double OPEN = 1e-10;

  final Equations equations;
  final Factors factors;
  private final DMatrixRMaj scaled;
  private final double[] step;
  private final double reach;
  private boolean clipped;

  /** Whether equations that hold are enough, where rounding leaves voltages open. */
  boolean met;

  /** What is left of a current, or of a source's voltage, that need not be met (A, V). */
  double slack;

  /** Whether the unknowns follow the strongest tree, turn by turn, or are plain node voltages. */
  boolean exact;

  /** Every amplifier begins in the middle of its range. */
  static final int MIDDLE = Integer.MIN_VALUE;

  /** At which end of its range each amplifier begins, a bit each: 0 for the upper one. */
  int sides = MIDDLE;

  Newton(Equations equations) {
    this.equations = equations;
    factors = new Factors(equations.n);
    scaled = new DMatrixRMaj(equations.n, equations.n);
    step = new double[equations.n];
    reach = 2 * equations.elements.reach();
  }

  /**
   * Searches from x, which becomes the solution.
   *
   * @param afresh whether devices begin at their bends instead of at x
   * @return whether the search ended well
   */
  boolean search(double[] x, boolean afresh, int most) {
    boolean started = !afresh;
    double moved = Double.MAX_VALUE;
    var limits = new Limits(equations);
    for (int turn = 0; turn < most; turn++) {
      boolean held = started ? evaluate(x, turn > 0 && moved > SETTLED) : start(x);
      started = true;
      if (exact) {
        equations.alongStrongest();
      }
      equations.assemble(x);
      boolean holds = met && !held && holds();
      if (!factor() || !holds && !step(x, limits)) {
        return false;
      }
      moved = holds ? 0 : moved(x);
      held |= !holds && clipped;
      boolean changed = limits.change(x);
      if (!held && !changed && moved <= SMALL_STEP) {
        evaluate(x, false);
        return met || determined() || !exact && exactly(x, most);
      }
    }
    return false;
  }

  /** Whether a point that was found with a leak solves the true equations to rounding. */
  boolean holdsWithoutLeak(double[] x) {
    double leak = equations.leak;
    equations.leak = 0;
    equations.assemble(x);
    equations.leak = leak;
    return holds();
  }

  /** Takes up a point again that was found before, whatever was searched for since. */
  void resume(double[] x) {
    evaluate(x, false);
    if (exact) {
      equations.alongStrongest();
    }
    equations.assemble(x);
    factor();
  }

  /** Goes on from a point that plain nodes cannot tell closely enough. */
  private boolean exactly(double[] x, int most) {
    exact = true;
    if (search(x, false, most)) {
      return true;
    }
    exact = false;
    equations.alongStar();
    return false;
  }

  private boolean start(double[] x) {
    int amplifier = 0;
    for (Elements.Law law : equations.elements.laws) {
      for (int t = 0; t < law.v.length; t++) {
        law.v[t] = equations.volts(x, law.spots[t]);
      }
      if (sides == MIDDLE || !law.device.amplifies()) {
        law.device.start(law.v, law.p);
      } else {
        law.device.start(law.v, law.p, (sides >> amplifier & 1) == 0 ? 1 : -1);
        amplifier = (amplifier + 1) % 16;
      }
      law.evaluate();
    }
    return !equations.elements.laws.isEmpty();
  }

  private boolean evaluate(double[] x, boolean limit) {
    boolean held = false;
    for (Elements.Law law : equations.elements.laws) {
      System.arraycopy(law.v, 0, law.last, 0, law.v.length);
      for (int t = 0; t < law.v.length; t++) {
        law.v[t] = equations.volts(x, law.spots[t]);
      }
      held |= limit && law.limit();
      law.evaluate();
    }
    return held;
  }

  private boolean holds() {
    for (int k = 0; k < equations.n; k++) {
      double share = k < equations.nodes.count && equations.along(k) ? FOLLOWING : ROUNDING;
      if (Math.abs(equations.residual[k])
          > share * (equations.size[k] + equations.loud[k]) + slack) {
        return false;
      }
    }
    return true;
  }

  private boolean factor() {
    scaled.setTo(equations.matrix);
    if (factors.of(scaled)) {
      return true;
    }
    equations.regularise();
    scaled.setTo(equations.matrix);
    return factors.of(scaled);
  }

  /** Takes the step; whether it is one of finite size. */
  private boolean step(double[] x, Limits limits) {
    for (int k = 0; k < equations.n; k++) {
      step[k] = -equations.residual[k];
    }
    factors.solve(step);
    clip();
    equations.tree().sum(step);
    boolean finite = true;
    for (int k = 0; k < equations.n; k++) {
      x[k] += step[k];
      finite &= Math.abs(x[k]) <= 1e200;
    }
    limits.meet(x);
    return finite;
  }

  /** No edge moves further at once than all sources together would move it. */
  private void clip() {
    clipped = false;
    for (int k = 0; k < equations.nodes.count; k++) {
      if (Math.abs(step[k]) > reach) {
        step[k] = Math.copySign(reach, step[k]);
        clipped = true;
      }
    }
  }

  /** Whether rounding leaves no voltage open. */
  boolean determined() {
    if (exact) {
      return !equations.open(OPEN);
    }
    double size = 0;
    for (int k = 0; k < equations.nodes.count; k++) {
      size = Math.max(size, equations.size[k]);
    }
    return Math.ulp(size) <= OPEN * factors.weakest();
  }

  /** The largest move of a node, in volts or as a share of its voltage. */
  private double moved(double[] x) {
    double most = 0;
    for (int k = 0; k < equations.nodes.count; k++) {
      most = Math.max(most, Math.abs(step[k]) / Math.max(1, Math.abs(x[k])));
    }
    return most;
  }
}
