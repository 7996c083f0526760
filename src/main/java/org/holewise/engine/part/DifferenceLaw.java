package org.holewise.engine.part;

import java.util.Arrays;
import java.util.List;
import org.holewise.engine.quantity.Parameter;

/**
 * Brings the difference of two inputs to a node of its own, terminals out, +, −, ground: the
 * current into out is {@link #SIEMENS} times (out − ground) − (V+ − V−). A capacitance at that node
 * makes it slow. Stateless.
 */
record DifferenceLaw() implements Device {
  /** Small, so that nothing else is felt at its ground (S). */
  static final double SIEMENS = 1e-6;

  @Override
  public int terminals() {
    return 4;
  }

  @Override
  public List<Parameter> parameters() {
    return List.of();
  }

  @Override
  public boolean draws(int terminal) {
    return terminal == 0 || terminal == 3;
  }

  @Override
  public boolean exponential() {
    return false;
  }

  @Override
  public boolean carries(int in, int out) {
    return draws(in) && draws(out);
  }

  @Override
  public void evaluate(double[] v, double[] p, double[] i, double[] dv, double[] dp) {
    Arrays.fill(i, 0);
    Arrays.fill(dv, 0);
    i[0] = SIEMENS * (v[0] - v[3] - (v[1] - v[2]));
    i[3] = -i[0];
    double[] by = {SIEMENS, -SIEMENS, SIEMENS, -SIEMENS};
    for (int t = 0; t < 4; t++) {
      dv[t] = by[t];
      dv[12 + t] = -by[t];
    }
  }

  @Override
  public boolean limit(double[] v, double[] last, double[] p) {
    return false;
  }
}
