package org.holewise.engine.reading;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.part.Pin;
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

  private final Meter meter;

  AcInstrument(Meter meter) {
    this.meter = meter;
  }

  Optional<Forecast> acVolts(Bench bench, Measure.AcVolts at, Condition condition) {
    return swing(bench, new Measure.Pair(at.red(), at.black()), condition)
        .map(swing -> forecast(swing.size(condition.hertz()), Function.ACVOLTS));
  }

  Optional<Forecast> peak(Bench bench, Measure.Peak at, Condition condition) {
    return swing(bench, new Measure.Pair(at.tip(), at.clip()), condition, Function.PEAK)
        .map(swing -> forecast(swing.peakToPeak(condition.hertz()), Function.PEAK));
  }

  private static Forecast forecast(Swing.Size size, Function function) {
    return new Forecast(
        Forecast.Sort.AMOUNT, function, size.value(), size.slopes(), size.floating());
  }

  Optional<Forecast> compared(Bench bench, Measure.Compared compared, Condition condition) {
    return swing(bench, compared.of(), condition)
        .flatMap(
            of ->
                swing(bench, compared.to(), condition)
                    .flatMap(to -> compared(new Sweep(of, to, meter), compared, condition)));
  }

  private static Optional<Forecast> compared(
      Sweep sweep, Measure.Compared compared, Condition condition) {
    if (compared instanceof Measure.Corner corner) {
      return sweep.corner(corner.upper());
    }
    if (compared instanceof Measure.Resonance) {
      return sweep.resonance();
    }
    return compared instanceof Measure.Ratio ratio
        ? sweep.ratio(condition.hertz(), ratio.decibel())
        : sweep.quality();
  }

  /**
   * What a counter shows: how often the circuit's own clock makes a pin swing; where it has none,
   * the frequency of the generators' largest tone there, 0 where none is enough.
   */
  Optional<Forecast> frequency(Bench bench, Measure.Frequency at, Condition condition) {
    Pin lead = bench.assembly().really(at.pin());
    return bench
        .frequency(condition, lead, LEAST_PEAK)
        .map(
            own ->
                new Forecast(
                    Forecast.Sort.AMOUNT, Function.FREQUENCY, own.value(), own.slopes(), false))
        .or(() -> bench.point(condition).map(point -> tone(point, lead, condition)));
  }

  private static Forecast tone(OperatingPoint point, Pin lead, Condition condition) {
    Point pin = new Point.AtPin(lead);
    boolean set = condition.hertz().isPresent();
    double most = LEAST_PEAK;
    double hertz = 0;
    for (Tone tone : point.tones(condition.hertz())) {
      double peak =
          point.swing(pin, point.circuit().reference(), tone, set).map(Phasor::size).orElse(0.0);
      hertz = peak > most ? tone.hertz() : hertz;
      most = Math.max(most, peak);
    }
    double[] slopes = new double[point.circuit().parameters().size()];
    return new Forecast(
        Forecast.Sort.AMOUNT, Function.FREQUENCY, hertz, slopes, point.floating(pin));
  }

  /** What swings under an AC voltmeter. */
  Optional<Swing> swing(Bench bench, Measure.Pair at, Condition condition) {
    return swing(bench, at, condition, Function.ACVOLTS);
  }

  private Optional<Swing> swing(
      Bench bench, Measure.Pair at, Condition condition, Function function) {
    Point plus = bench.assembly().point(at.red());
    Point minus = bench.assembly().point(at.black());
    double ohms = meter.range(function, 0).ohms();
    return bench
        .point(condition, List.of(new Edit.Across(plus, minus, ohms)))
        .map(point -> Swing.of(point, plus, minus));
  }
}
