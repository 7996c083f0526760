package org.holewise.engine.reading;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.holewise.engine.solver.OperatingPoint;
import org.holewise.engine.solver.Phasor;
import org.holewise.engine.solver.Point;
import org.holewise.engine.solver.SmallSignal.Tone;
import org.holewise.engine.solver.Transfer;

/** What swings between two points about an operating point, the instrument across them. */
record Swing(OperatingPoint point, Point plus, Point minus, List<Transfer> transfers) {

  static Swing of(OperatingPoint point, Point plus, Point minus) {
    return new Swing(point, plus, minus, point.transfers(plus, minus));
  }

  /** A swinging voltage as one number, with its slopes. */
  @SuppressWarnings("ArrayRecordComponent")
  record Size(double value, double[] slopes, boolean floating) {}

  /**
   * Its root mean square (V).
   *
   * @param hertz what every generator is set to; its own where empty
   */
  Size size(OptionalDouble hertz) {
    double square = 0;
    double[] slopes = new double[parameters()];
    for (Tone tone : point.tones(hertz)) {
      Optional<Phasor> phasor = point.swing(plus, minus, tone, hertz.isPresent());
      double rms = tone.wave().rms() * phasor.map(Phasor::size).orElse(0.0);
      square += rms * rms;
      add(phasor, tone.wave().rms() * rms, slopes);
    }
    double root = Math.sqrt(square);
    for (int k = 0; root > 0 && k < slopes.length; k++) {
      slopes[k] /= root;
    }
    return new Size(root, slopes, floating());
  }

  /** From its lowest to its highest (V). */
  Size peakToPeak(OptionalDouble hertz) {
    double sum = 0;
    double[] slopes = new double[parameters()];
    for (Tone tone : point.tones(hertz)) {
      Optional<Phasor> phasor = point.swing(plus, minus, tone, hertz.isPresent());
      sum += 2 * phasor.map(Phasor::size).orElse(0.0);
      add(phasor, 2, slopes);
    }
    return new Size(sum, slopes, floating());
  }

  /** {@link #size} without its slopes, in much less time (V). */
  double rms(double hertz) {
    double square = 0;
    for (Transfer transfer : transfers) {
      double rms = transfer.wave().rms() * transfer.peak(hertz);
      square += rms * rms;
    }
    return Math.sqrt(square);
  }

  int parameters() {
    return point.circuit().parameters().size();
  }

  boolean floating() {
    return point.floating(plus) || point.floating(minus);
  }

  private static void add(Optional<Phasor> phasor, double scale, double[] slopes) {
    if (phasor.isPresent()) {
      double[] own = phasor.get().slopes();
      for (int k = 0; k < slopes.length; k++) {
        slopes[k] += scale * own[k];
      }
    }
  }
}
