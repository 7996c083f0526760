package org.holewise.engine.reading;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
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
 * put to its limits, one at a time: the {@link Bending} found there widens band and worst case and
 * never narrows them.
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
  private final List<Reach> reaches;

  /**
   * How far one parameter may lie below and above where it was put, and its deviation; the benches
   * that have it so, and the one that they were moved from.
   */
  private record Reach(
      double down, double up, double deviation, Bench from, Bench low, Bench high) {
    boolean none() {
      return down <= 0 && up <= 0;
    }
  }

  /** How far a reading goes down and up from its expected value. */
  private record Span(double down, double up) {}

  Bands(Bench nominal, Instrument instrument, Uncertainty uncertainty, SupplyShift shift) {
    this(
        shift.supplies().isEmpty() ? nominal : nominal.with(shift.values()),
        instrument,
        uncertainty,
        shift,
        new ArrayList<>());
    for (int k = 0; k < nominal.parameters().size(); k++) {
      reaches.add(reach(k));
    }
  }

  private Bands(
      Bench bench,
      Instrument instrument,
      Uncertainty uncertainty,
      SupplyShift shift,
      List<Reach> reaches) {
    this.bench = bench;
    this.instrument = instrument;
    this.uncertainty = uncertainty;
    this.shift = shift;
    this.reaches = reaches;
  }

  /**
   * The same without what measured supplies say. How the circuit bends about numbers that they did
   * not move is taken from the benches here.
   */
  Bands without(Bench nominal) {
    var none = SupplyShift.none(nominal.parameters());
    var bands = new Bands(nominal, instrument, uncertainty, none, new ArrayList<>());
    for (int k = 0; k < reaches.size(); k++) {
      Reach own = reaches.get(k);
      bands.reaches.add(
          told(k)
              ? bands.reach(k)
              : new Reach(
                  own.down(),
                  own.up(),
                  none.deviation(uncertainty, k),
                  own.from(),
                  own.low(),
                  own.high()));
    }
    return bands;
  }

  /** Whether a measured supply moved a parameter. */
  private boolean told(int k) {
    return shift.values()[k] != bench.parameters().get(k).nominal();
  }

  private Reach reach(int k) {
    Parameter parameter = bench.parameters().get(k);
    double deviation = shift.deviation(uncertainty, k);
    double down = told(k) ? WORST * deviation : parameter.nominal() - parameter.low();
    double up = told(k) ? WORST * deviation : parameter.high() - parameter.nominal();
    return new Reach(down, up, deviation, bench, moved(k, -down), moved(k, up));
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
    Map<Bench, Optional<Bending>> bendings = new IdentityHashMap<>();
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
      double down = -forecast.slopes()[k] * reach.down();
      double up = forecast.slopes()[k] * reach.up();
      Optional<Bending> bending =
          bends
              ? bendings.computeIfAbsent(
                  reach.from(), from -> Bending.about(from, instrument, measure, condition))
              : Optional.empty();
      double low = bent(bending, reach.low(), k, -reach.down());
      double high = bent(bending, reach.high(), k, reach.up());
      Span worst = span(down + low, up + high, down, up);
      worstDown += worst.down();
      worstUp += worst.up();
      if (bends) {
        double plain = COVERAGE * forecast.slopes()[k] * reach.deviation();
        Span likely = likely(reach, forecast.slopes()[k], low, high);
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

  private static double bent(Optional<Bending> bending, Bench moved, int k, double by) {
    return bending.filter(bends -> by != 0).map(bends -> bends.of(moved, k, by)).orElse(0.0);
  }

  /** Two deviations of one parameter, with the bending found at its limits. */
  private static Span likely(Reach reach, double slope, double low, double high) {
    double step = COVERAGE * reach.deviation();
    return span(
        -slope * step + nearer(low, step, reach.down()),
        slope * step + nearer(high, step, reach.up()));
  }

  /** Bending grows with the square of the step. */
  private static double nearer(double bending, double step, double reach) {
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
