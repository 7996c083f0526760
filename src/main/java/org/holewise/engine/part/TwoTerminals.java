package org.holewise.engine.part;

/** What flows into one end flows out of the other. */
final class TwoTerminals {
  private TwoTerminals() {}

  /** Fills in the second terminal from {@code i[0]} and {@code dv[0]}. */
  static void mirror(double[] i, double[] dv) {
    i[1] = -i[0];
    dv[1] = -dv[0];
    dv[2] = -dv[0];
    dv[3] = dv[0];
  }
}
