package org.holewise.engine.solver;

import java.util.List;
import java.util.OptionalDouble;

/** What swings in a circuit of rows with one generator G1. */
final class Swings {
  private final Rows rows;
  private final OperatingPoint point;

  private Swings(Rows rows) {
    this.rows = rows;
    this.point = Rows.solved(rows.circuit());
  }

  static Swings of(String text) {
    return new Swings(Rows.of(text));
  }

  Phasor volts(String plus, String minus, double hertz) {
    List<SmallSignal.Tone> tones = point.tones(OptionalDouble.of(hertz));
    return point.swing(rows.at(plus), rows.at(minus), tones.get(0), true).orElseThrow();
  }

  /** Swing at one net over that at another, both against net 0. */
  double gain(String out, String in, double hertz) {
    return volts(out, "0", hertz).size() / volts(in, "0", hertz).size();
  }

  /**
   * Where the gain has fallen to a share of what it is at {@code from}, sought towards {@code to}.
   */
  double fallsTo(double share, String out, String in, double from, double to) {
    double level = share * gain(out, in, from);
    double low = Math.log(from);
    double high = Math.log(to);
    for (int k = 0; k < 60; k++) {
      double middle = (low + high) / 2;
      if (gain(out, in, Math.exp(middle)) > level) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.exp(low);
  }

  OperatingPoint point() {
    return point;
  }

  Rows rows() {
    return rows;
  }
}
