package org.holewise.engine.solver;

import java.util.Arrays;

/**
 * Ways round a plain search that does not end. First the same along the strongest tree. Then the
 * circuit is changed into one that is easy, solved, and changed back in steps that shrink where a
 * step fails. In turn: a conductance along every device that is taken away; the sources' voltages
 * brought up from nothing (both Nagel 1975); and pseudo-transient steps, where a conductance pulls
 * every node to where it was, as capacitors would (Kelley and Keyes 1998, SIAM Journal on Numerical
 * Analysis 35(2)). The last way, {@link Homotopy}, follows such a pull along a path that may turn
 * back: feedback that would swing has a point at rest too, to which no time leads.
 *
 * <p>Each ends with a search on the true circuit. Where junctions that block leak each other out,
 * the true equations hold to rounding over a range of voltages: there the point is the one to which
 * a vanishing conductance leads.
 */
final class Continuation {
  private static final int TURNS = 60;
  private static final int LAST_TURNS = 200;

  /** A conductance below this changes nothing that the last search could not put right (S). */
  private static final double NO_CONDUCTANCE = 1e-20;

  /** Down to this a leak outweighs the rounding of what junctions leak themselves (S). */
  private static final double LEAST_LEAK = 1e-12;

  /**
   * The last resort: a current that every net may be out by (A), where voltages are open by more
   * than the rounding that was reckoned with. Some five circuits of 100,000 drawn at random come to
   * that.
   */
  private static final double FEMTO = 1e-15;

  /** Paths that are followed, and what spreads their anchors evenly: the golden ratio less one. */
  private static final int WAYS = 4;

  private static final double GOLDEN = 0.6180339887498949;

  /** Patterns that differ in many places. */
  private static final int[] SIDES = {
    0, -1, 0x5555, 0xAAAA, 0x3333, 0xCCCC, 0x0F0F, 0xF0F0, 0x6666, 0x9999, 0x00FF, 0xFF00
  };

  /** Of a gain of 100,000 this leaves a tenth. */
  private static final double LEAST_GAIN = 1e-6;

  private final Newton newton;
  private final Equations equations;

  Continuation(Newton newton) {
    this.newton = newton;
    this.equations = newton.equations;
  }

  /**
   * The solution in x, whatever x was.
   *
   * @param plainly whether to begin with a plain search from nothing
   * @return whether any way led to it
   */
  boolean search(double[] x, boolean plainly) {
    reset(x);
    if (plainly && newton.search(x, true, TURNS)) {
      return true;
    }
    newton.exact = true;
    if (afresh(x)) {
      return true;
    }
    boolean amplified = Amplifiers.any(equations.elements);
    if (amplified && (fromEnds(x) || byGain(x))) {
      return true;
    }
    newton.met = true;
    if (amplified && (fromEnds(x) || byGain(x))) {
      return true;
    }
    if (byConductance(x) || bySources(x) || byTime(x)) {
      return true;
    }
    if (equations.elements.feeds.isEmpty() && byPath(x)) {
      return true;
    }
    newton.slack = FEMTO;
    return byConductance(x) || byTime(x);
  }

  /**
   * Along paths that may turn back, from anchors that lie unevenly between the sources' ends. Not
   * for feeds: where they are blocked there is no end to the path.
   */
  private boolean byPath(double[] x) {
    var homotopy = new Homotopy(equations);
    double reach = equations.elements.reach();
    for (int way = 0; way < WAYS; way++) {
      reset(x);
      for (int k = 0; k < equations.anchor.length; k++) {
        equations.anchor[k] = reach * (((way + 1) * GOLDEN * (k + 1)) % 1 - 0.5);
      }
      if (homotopy.follow(x) && last(x)) {
        return true;
      }
    }
    return false;
  }

  private boolean afresh(double[] x) {
    reset(x);
    return newton.search(x, true, LAST_TURNS);
  }

  private boolean last(double[] x) {
    equations.leak = 0;
    equations.shunt = 0;
    equations.share = 1;
    return newton.search(x, false, LAST_TURNS);
  }

  private void reset(double[] x) {
    Arrays.fill(x, 0);
    Arrays.fill(equations.anchor, 0);
    equations.elements.sources.forEach(source -> source.limiting = false);
    equations.elements.laws.forEach(law -> Arrays.fill(law.v, 0));
  }

  /** Amplifiers at the ends of their ranges, some at the upper and some at the lower one. */
  private boolean fromEnds(double[] x) {
    for (int sides : SIDES) {
      newton.sides = sides;
      if (afresh(x)) {
        return true;
      }
    }
    newton.sides = Newton.MIDDLE;
    return false;
  }

  /** Amplifiers that hardly amplify at first. */
  private boolean byGain(double[] x) {
    reset(x);
    double[] good = x.clone();
    double gain = LEAST_GAIN;
    double ratio = 10;
    boolean first = true;
    while (gain < 1) {
      gain(gain);
      if (newton.search(x, first, TURNS)) {
        first = false;
        System.arraycopy(x, 0, good, 0, x.length);
        ratio = Math.min(ratio * 2, 10);
      } else {
        System.arraycopy(good, 0, x, 0, x.length);
        gain /= ratio;
        ratio = Math.sqrt(ratio);
        if (first || ratio < 1.02) {
          gain(1);
          return false;
        }
      }
      gain *= ratio;
    }
    gain(1);
    return last(x);
  }

  private void gain(double share) {
    equations.elements.laws.forEach(law -> law.gain = share);
  }

  private boolean byConductance(double[] x) {
    reset(x);
    double[] good = x.clone();
    double g = 1;
    double ratio = 10;
    boolean first = true;
    while (g > LEAST_LEAK || g > NO_CONDUCTANCE && newton.determined()) {
      equations.leak = g;
      if (newton.search(x, first, TURNS)) {
        first = false;
        if (newton.holdsWithoutLeak(x)) {
          return last(x);
        }
        System.arraycopy(x, 0, good, 0, x.length);
        ratio = Math.min(ratio * 2, 100);
      } else {
        if (first || ratio < 1.01) {
          return false;
        }
        System.arraycopy(good, 0, x, 0, x.length);
        g *= ratio;
        ratio = Math.sqrt(ratio);
      }
      g /= ratio;
    }
    return last(x);
  }

  private boolean bySources(double[] x) {
    reset(x);
    double[] good = x.clone();
    equations.leak = 0;
    double done = 0;
    double stride = 0.1;
    while (done < 1) {
      equations.share = Math.min(1, done + stride);
      if (newton.search(x, false, TURNS)) {
        done = equations.share;
        stride *= 2;
        System.arraycopy(x, 0, good, 0, x.length);
      } else {
        System.arraycopy(good, 0, x, 0, x.length);
        stride /= 4;
        if (stride < 1e-5) {
          return false;
        }
      }
    }
    return last(x);
  }

  private boolean byTime(double[] x) {
    reset(x);
    equations.share = 1;
    double[] good = x.clone();
    double g = 1;
    for (int steps = 0; steps < 2000 && g > NO_CONDUCTANCE; steps++) {
      equations.shunt = g;
      System.arraycopy(good, 0, equations.anchor, 0, equations.anchor.length);
      if (newton.search(x, false, TURNS)) {
        System.arraycopy(x, 0, good, 0, x.length);
        g /= 2;
      } else {
        System.arraycopy(good, 0, x, 0, x.length);
        g *= 8;
      }
    }
    return last(x);
  }
}
