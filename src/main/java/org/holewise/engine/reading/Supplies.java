package org.holewise.engine.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.netlist.Netlist;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.quantity.Parameter;

/** Finds the readings that measure a supply, and conditions a bench on what they showed. */
final class Supplies {

  private Supplies() {}

  /** Ref of the source that a reading measures straight across its pins, or their nets. */
  static Optional<String> measuredBy(Reading reading, Exercise exercise, Netlist netlist) {
    List<Probe> points = reading.measure().points();
    boolean swings =
        reading.measure() instanceof Measure.AcVolts || reading.measure() instanceof Measure.Peak;
    if (!(swings || reading.measure() instanceof Measure.Volts)
        || !(points.get(0) instanceof Probe.AtPin red)
        || !(points.get(1) instanceof Probe.AtPin black)) {
      return Optional.empty();
    }
    return exercise.parts().stream()
        .filter(part -> part.kind().source() && part.kind().swings() == swings)
        .filter(part -> across(part, red.pin(), black.pin(), netlist))
        .map(Part::ref)
        .findFirst();
  }

  private static boolean across(Part source, Pin red, Pin black, Netlist netlist) {
    int plus = netlist.net(red);
    int minus = netlist.net(black);
    List<Pin> pins = source.pins();
    return plus != minus
        && pins.stream().anyMatch(pin -> netlist.net(pin) == plus)
        && pins.stream().anyMatch(pin -> netlist.net(pin) == minus);
  }

  /** The bench's parameters moved to what its supplies showed. */
  static SupplyShift shift(
      Bench bench, Instrument instrument, Uncertainty uncertainty, Map<String, Taken> taken) {
    var forecasts = new ArrayList<Forecast>();
    var surprises = new ArrayList<Double>();
    var refs = new ArrayList<String>();
    var coarser = new ArrayList<Double>();
    Exercise exercise = bench.assembly().exercise();
    for (Reading reading : exercise.readings()) {
      var ref = measuredBy(reading, exercise, bench.assembly().netlist());
      Taken what = taken.getOrDefault(reading.id(), Taken.MISSING);
      var shown = what.shown();
      if (ref.isPresent() && shown.isPresent() && shown.get() instanceof Shown.Amount amount) {
        instrument
            .read(bench, reading.measure(), exercise.condition(reading.occasion()))
            .ifPresent(
                forecast -> {
                  forecasts.add(forecast);
                  surprises.add(amount.value() - forecast.value());
                  refs.add(ref.get());
                  coarser.add(what.coarser(reading.measure(), instrument.meter()));
                });
      }
    }
    return shift(bench.parameters(), forecasts, surprises, coarser, refs, uncertainty);
  }

  private static SupplyShift shift(
      List<Parameter> parameters,
      List<Forecast> forecasts,
      List<Double> surprises,
      List<Double> coarser,
      List<String> refs,
      Uncertainty uncertainty) {
    SupplyShift none = SupplyShift.none(parameters);
    int n = forecasts.size();
    if (n == 0) {
      return none;
    }
    double[] values = none.values();
    var covariance = new DMatrixRMaj(n, n);
    var surprise = new DMatrixRMaj(n, 1);
    for (int i = 0; i < n; i++) {
      surprise.set(i, 0, surprises.get(i));
      for (int j = 0; j < n; j++) {
        covariance.set(
            i,
            j,
            i == j
                ? uncertainty.variance(forecasts.get(i)) + coarser.get(i) * coarser.get(i) / 3
                : uncertainty.covariance(forecasts.get(i), forecasts.get(j)));
      }
    }
    var inverse = new DMatrixRMaj(n, n);
    if (!CommonOps_DDRM.invert(covariance, inverse)) {
      return none;
    }
    var weighted = new DMatrixRMaj(n, 1);
    CommonOps_DDRM.mult(inverse, surprise, weighted);
    for (int k = 0; k < values.length; k++) {
      String name = parameters.get(k).name();
      if (refs.stream().anyMatch(ref -> name.startsWith(ref + "."))) {
        for (int i = 0; i < n; i++) {
          values[k] +=
              uncertainty.variances()[k] * forecasts.get(i).slopes()[k] * weighted.get(i, 0);
        }
      }
    }
    return new SupplyShift(values, forecasts, inverse);
  }
}
