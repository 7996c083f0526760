package org.holewise.engine.reading;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.part.Pin;
import org.holewise.engine.solver.OperatingPoint;
import org.holewise.engine.solver.Point;
import org.holewise.engine.solver.Response;

/**
 * How far a reading of benches that differ from one in values alone is from where that one's slopes
 * lead. Voltages and currents are read off the circuit without the meter's own load, of whose
 * influence on the bending only its small share is lost.
 *
 * @param glance the reading of any such bench
 */
record Bending(Forecast centre, Function<Bench, Optional<Double>> glance) {

  /** That of one reading about a bench; empty where the circuit has no solution. */
  static Optional<Bending> about(
      Bench bench, Instrument instrument, Measure measure, Condition condition) {
    if (measure instanceof Measure.Volts volts) {
      return volts(bench, instrument.meter(), volts, condition);
    }
    if (measure instanceof Measure.Amps amps) {
      return amps(bench, bench.assembly().really(amps.pin()), condition);
    }
    if (measure instanceof Measure.Seen lamp && bench.settled(condition).isEmpty()) {
      return amps(bench, Instrument.looked(bench, lamp.ref()), condition);
    }
    return instrument
        .read(bench, measure, condition)
        .map(
            centre ->
                new Bending(
                    centre,
                    moved -> instrument.read(moved, measure, condition).map(Forecast::value)));
  }

  private static Optional<Bending> volts(
      Bench bench, Meter meter, Measure.Volts volts, Condition condition) {
    Point red = bench.assembly().point(volts.red());
    Point black = bench.assembly().point(volts.black());
    return bench
        .point(condition)
        .map(point -> point.response(red, black))
        .map(
            open ->
                of(
                    bench,
                    condition,
                    open,
                    meter.voltsShare(open.ohms()),
                    p -> p.volts(red, black)));
  }

  private static Optional<Bending> amps(Bench bench, Pin lead, Condition condition) {
    return bench
        .point(condition)
        .map(point -> of(bench, condition, point.currentResponse(lead), 1, p -> p.current(lead)));
  }

  private static Bending of(
      Bench bench,
      Condition condition,
      Response response,
      double share,
      ToDoubleFunction<OperatingPoint> value) {
    var bare =
        new Forecast(
            Forecast.Sort.AMOUNT,
            org.holewise.engine.reading.Function.VOLTS,
            response.value(),
            response.slopes(),
            false);
    return new Bending(
        bench.named(condition, bare.scaled(share)),
        moved -> moved.point(condition).map(point -> share * value.applyAsDouble(point)));
  }

  /**
   * What the slopes do not say; 0 for a bench that has no solution.
   *
   * @param k the parameter that the other bench has otherwise, by so much
   */
  double of(Bench moved, int k, double by) {
    return glance
        .apply(moved)
        .map(value -> value - centre.value() - centre.slopes()[k] * by)
        .filter(Double::isFinite)
        .orElse(0.0);
  }
}
