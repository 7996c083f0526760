package org.holewise.engine.reading;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.solver.Edit;
import org.holewise.engine.solver.OperatingPoint;
import org.holewise.engine.solver.Phasor;
import org.holewise.engine.solver.Point;
import org.holewise.engine.solver.SmallSignal.Tone;

/**
 * Takes readings of what swings, the instrument's resistance across the points: by the small signal
 * about the operating point. Tones of several generators add by their squares in a root mean
 * square, by their peaks on a scope. Of waves other than the sine the circuit is taken to leave the
 * shape alone.
 */
final class AcInstrument {
  /** Peak below which a counter does not count (V; common practice). */
  private static final double LEAST_PEAK = 0.05;

  private static final double DECIBELS = 20 / StrictMath.log(10);

  private final Meter meter;

  AcInstrument(Meter meter) {
    this.meter = meter;
  }

  /** A swinging voltage as one number, with its slopes. */
  private record Size(double value, double[] slopes, boolean floating) {}

  Optional<Forecast> acVolts(Bench bench, Measure.AcVolts at, Condition condition) {
    return size(bench, at.red(), at.black(), condition, Function.ACVOLTS)
        .map(size -> forecast(size, Function.ACVOLTS));
  }

  Optional<Forecast> peak(Bench bench, Measure.Peak at, Condition condition) {
    return size(bench, at.tip(), at.clip(), condition, Function.PEAK)
        .map(size -> forecast(size, Function.PEAK));
  }

  private static Forecast forecast(Size size, Function function) {
    return new Forecast(
        Forecast.Sort.AMOUNT, function, size.value(), size.slopes(), size.floating());
  }

  Optional<Forecast> ratio(Bench bench, Measure.Ratio ratio, Condition condition) {
    return size(bench, ratio.of().red(), ratio.of().black(), condition, Function.ACVOLTS)
        .flatMap(
            of ->
                size(bench, ratio.to().red(), ratio.to().black(), condition, Function.ACVOLTS)
                    .map(to -> ratio(of, to, ratio.decibel())));
  }

  private Forecast ratio(Size of, Size to, boolean decibel) {
    double plain = of.value() / to.value();
    double scale = decibel ? DECIBELS : plain;
    double[] slopes = new double[of.slopes().length];
    if (Double.isFinite(plain) && plain > 0) {
      for (int k = 0; k < slopes.length; k++) {
        slopes[k] = scale * (of.slopes()[k] / of.value() - to.slopes()[k] / to.value());
      }
    }
    return new Forecast(
        Forecast.Sort.AMOUNT,
        decibel ? Function.DECIBELS : Function.RATIO,
        decibel ? DECIBELS * StrictMath.log(plain) : plain,
        slopes,
        of.floating() || to.floating(),
        plain > 0 ? scale * StrictMath.hypot(share(of), share(to)) : 0);
  }

  /** Limit of the digits' error as a share of a voltage. */
  private double share(Size size) {
    return meter.digits(Function.ACVOLTS, size.value()) / size.value();
  }

  /** What a counter shows: the frequency of the largest tone at a pin, 0 where none is enough. */
  Optional<Forecast> frequency(Bench bench, Measure.Frequency at, Condition condition) {
    Point pin = bench.assembly().point(Probe.at(at.pin()));
    return bench
        .point(condition)
        .map(
            point -> {
              double most = LEAST_PEAK;
              double hertz = 0;
              for (Tone tone : point.tones(condition.hertz())) {
                double peak =
                    swing(point, pin, point.circuit().reference(), tone, condition)
                        .map(Phasor::size)
                        .orElse(0.0);
                hertz = peak > most ? tone.hertz() : hertz;
                most = Math.max(most, peak);
              }
              double[] slopes = new double[point.circuit().parameters().size()];
              return new Forecast(
                  Forecast.Sort.AMOUNT, Function.FREQUENCY, hertz, slopes, point.floating(pin));
            });
  }

  private Optional<Size> size(
      Bench bench, Probe red, Probe black, Condition condition, Function function) {
    Point plus = bench.assembly().point(red);
    Point minus = bench.assembly().point(black);
    double ohms = meter.range(function, 0).ohms();
    return bench
        .point(condition, List.of(new Edit.Across(plus, minus, ohms)))
        .map(point -> size(point, plus, minus, condition, function));
  }

  private static Size size(
      OperatingPoint point, Point plus, Point minus, Condition condition, Function function) {
    double square = 0;
    double sum = 0;
    double[] slopes = new double[point.circuit().parameters().size()];
    for (Tone tone : point.tones(condition.hertz())) {
      Optional<Phasor> phasor = swing(point, plus, minus, tone, condition);
      if (phasor.isEmpty()) {
        continue;
      }
      boolean rms = function == Function.ACVOLTS;
      double scale = rms ? tone.wave().rms() : 2;
      double size = scale * phasor.get().size();
      double[] by = phasor.get().slopes();
      square += size * size;
      sum += size;
      for (int k = 0; k < slopes.length; k++) {
        slopes[k] += scale * by[k] * (rms ? size : 1);
      }
    }
    boolean floating = point.floating(plus) || point.floating(minus);
    if (function == Function.PEAK) {
      return new Size(sum, slopes, floating);
    }
    double root = Math.sqrt(square);
    for (int k = 0; root > 0 && k < slopes.length; k++) {
      slopes[k] /= root;
    }
    return new Size(root, slopes, floating);
  }

  private static Optional<Phasor> swing(
      OperatingPoint point, Point plus, Point minus, Tone tone, Condition condition) {
    return point.swing(plus, minus, tone, condition.hertz().isPresent());
  }
}
