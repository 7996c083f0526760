package org.holewise.engine.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.quantity.Parameter;

/**
 * Between which limits a reading of a bench may lie.
 *
 * <p>The band is the expected value and two standard uncertainties either way (JCGM 100, 6.3.3),
 * the worst case the sum of what each parameter's limits do. Both follow from the slopes at the
 * operating point, one transposed solve a reading. Where the circuit bends, each parameter is also
 * put to its limits, one at a time: the bending found there widens band and worst case and never
 * narrows them.
 */
final class Bands {
  /** Coverage factor of the band: about 95 %. */
  private static final double COVERAGE = 2;

  /** Deviations that are the worst case of a parameter once a measured supply has told of it. */
  private static final double WORST = 3;

  private final Instrument instrument;
  private final Bench bench;
  private final SupplyShift shift;
  private final Uncertainty uncertainty;
  private final List<Reach> reaches = new ArrayList<>();

  /** How far one parameter may lie below and above where it was put, and its deviation. */
  private record Reach(double down, double up, double deviation, Bench low, Bench high) {
    boolean none() {
      return down <= 0 && up <= 0;
    }
  }

  /** How far a reading goes down and up from its expected value. */
  private record Span(double down, double up) {}

  Bands(Bench nominal, Instrument instrument, Uncertainty uncertainty, SupplyShift shift) {
    this.instrument = instrument;
    this.shift = shift;
    this.uncertainty = uncertainty;
    bench = shift.supplies().isEmpty() ? nominal : nominal.with(shift.values());
    List<Parameter> parameters = nominal.parameters();
    for (int k = 0; k < parameters.size(); k++) {
      reaches.add(reach(parameters.get(k), k));
    }
  }

  private Reach reach(Parameter parameter, int k) {
    double centre = shift.values()[k];
    double deviation = shift.deviation(uncertainty, k);
    boolean told = centre != parameter.nominal();
    double down = told ? WORST * deviation : parameter.nominal() - parameter.low();
    double up = told ? WORST * deviation : parameter.high() - parameter.nominal();
    return new Reach(down, up, deviation, moved(k, -down), moved(k, up));
  }

  private Bench moved(int k, double by) {
    if (by == 0) {
      return bench;
    }
    double[] values = shift.values().clone();
    values[k] += by;
    return bench.with(values);
  }

  /**
   * What the reading should be; empty where the circuit has no solution. Where something is
   * anybody's guess, anything between what it makes of the reading low and high.
   */
  Optional<Expected> expected(Measure measure, Condition condition) {
    Optional<Expected> low = once(measure, condition);
    if (!bench.doubtful(condition)) {
      return low;
    }
    var high = new Bands(bench.doubted(), instrument, uncertainty, shift).once(measure, condition);
    return low.flatMap(one -> high.map(one::or));
  }

  private Optional<Expected> once(Measure measure, Condition condition) {
    return instrument
        .read(bench, measure, condition)
        .map(
            forecast ->
                forecast.sort() == Forecast.Sort.LEVEL && forecast.floating()
                    ? anyLevel(forecast)
                    : Double.isInfinite(forecast.value())
                            || forecast.sort() == Forecast.Sort.FLICKER
                        ? exactly(forecast)
                        : around(forecast, measure, condition));
  }

  /** A level that nothing makes: nobody can be wrong about it. */
  private Expected anyLevel(Forecast forecast) {
    return new Expected(forecast.shown(instrument.meter()), -1, 2, -1, 2, true);
  }

  private Expected exactly(Forecast forecast) {
    double value = forecast.value();
    return new Expected(
        forecast.shown(instrument.meter()), value, value, value, value, forecast.floating());
  }

  private Expected around(Forecast forecast, Measure measure, Condition condition) {
    boolean bends = !bench.circuit(condition).linear() || measure.tuned();
    double square = COVERAGE * COVERAGE * shift.variance(uncertainty, forecast);
    double below = square;
    double above = square;
    double worstDown = 0;
    double worstUp = 0;
    for (int k = 0; k < reaches.size(); k++) {
      Reach reach = reaches.get(k);
      if (reach.none()) {
        continue;
      }
      double slope = forecast.slopes()[k];
      double low =
          bends ? change(reach.low(), forecast, measure, condition) : -slope * reach.down();
      double high = bends ? change(reach.high(), forecast, measure, condition) : slope * reach.up();
      Span worst = span(low, high, -slope * reach.down(), slope * reach.up());
      worstDown += worst.down();
      worstUp += worst.up();
      if (bends) {
        double plain = COVERAGE * slope * reach.deviation();
        Span likely = likely(reach, slope, low, high);
        below += Math.max(0, likely.down() * likely.down() - plain * plain);
        above += Math.max(0, likely.up() * likely.up() - plain * plain);
      }
    }
    double value = forecast.value();
    return new Expected(
        forecast.shown(instrument.meter()),
        value - Math.sqrt(below),
        value + Math.sqrt(above),
        value - worstDown,
        value + worstUp,
        forecast.floating(),
        forecast.own());
  }

  /** What the reading does when one parameter goes to a limit. */
  private double change(Bench moved, Forecast centre, Measure measure, Condition condition) {
    return instrument
        .read(moved, measure, condition)
        .map(forecast -> forecast.value() - centre.value())
        .filter(Double::isFinite)
        .orElse(0.0);
  }

  /** Two deviations of one parameter, the bending found at its limits included. */
  private static Span likely(Reach reach, double slope, double low, double high) {
    double step = COVERAGE * reach.deviation();
    double down = -slope * step + bent(low + slope * reach.down(), step, reach.down());
    double up = slope * step + bent(high - slope * reach.up(), step, reach.up());
    return span(down, up);
  }

  /** Bending grows with the square of the step. */
  private static double bent(double bending, double step, double reach) {
    return reach > 0 ? bending * (step / reach) * (step / reach) : 0;
  }

  private static Span span(double... changes) {
    double down = 0;
    double up = 0;
    for (double change : changes) {
      down = Math.max(down, -change);
      up = Math.max(up, change);
    }
    return new Span(down, up);
  }
}
