package org.holewise.engine.solver;

/**
 * The states of sources with a current limit: each either keeps its voltage or gives way at its
 * limit, and goes over where a solution violates its own state. This is the active set of a linear
 * complementarity problem, changed as in the semismooth Newton method (Qi and Sun 1993,
 * Mathematical Programming 58).
 */
final class Limits {
  /** By how much a limit may be passed before it counts; a share. */
  private static final double SLACK = 1e-12;

  /** After so many changes they are made one at a time, lest they go round in circles. */
  private static final int FREE_CHANGES = 12;

  private final Equations equations;
  private int changes;

  Limits(Equations equations) {
    this.equations = equations;
  }

  /** A limit is met exactly, not to rounding of what the current was before. */
  void meet(double[] x) {
    for (int k = 0; k < equations.elements.sources.size(); k++) {
      Elements.Source source = equations.elements.sources.get(k);
      if (source.limiting) {
        x[equations.nodes.count + k] = -source.limit;
      }
    }
  }

  /** Changes the states that x violates; whether there were any. */
  boolean change(double[] x) {
    int before = changes;
    for (int k = 0; k < equations.elements.sources.size(); k++) {
      Elements.Source source = equations.elements.sources.get(k);
      boolean free = changes == before || changes < FREE_CHANGES;
      if (free && source.limit < Double.POSITIVE_INFINITY && violated(source, k, x)) {
        source.limiting = !source.limiting;
        changes++;
      }
    }
    return changes > before;
  }

  private boolean violated(Elements.Source source, int k, double[] x) {
    if (!source.limiting) {
      return -x[equations.nodes.count + k] > source.limit * (1 + SLACK);
    }
    double volts = equations.volts(x, source.plus) - equations.volts(x, source.minus);
    double set = equations.share * source.volts;
    return volts > set + SLACK * Math.max(1, Math.abs(set));
  }
}
