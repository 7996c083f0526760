package org.holewise.engine.diagnosis;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.reading.Bench;
import org.holewise.engine.reading.Forecast;
import org.holewise.engine.reading.Instrument;

/** What an instrument reads of one bench, each reading taken once. Not for several threads. */
final class Forecasts {
  /** How closely readings agree that are the same (share of them). */
  private static final double SAME = 1e-6;

  final Bench bench;
  final Instrument instrument;
  private final Map<Question, Optional<Forecast>> read = new LinkedHashMap<>();

  private record Question(Measure measure, Condition condition) {}

  private final List<Parameter> parameters;

  Forecasts(Bench bench, Instrument instrument) {
    this(bench, instrument, bench.parameters());
  }

  private Forecasts(Bench bench, Instrument instrument, List<Parameter> parameters) {
    this.bench = bench;
    this.instrument = instrument;
    this.parameters = parameters;
  }

  /** Those of another bench, which is known to read the same wherever this one was asked. */
  Forecasts on(Bench other) {
    var same = new Forecasts(other, instrument, parameters);
    same.read.putAll(read);
    return same;
  }

  List<Parameter> parameters() {
    return parameters;
  }

  /** Whether the two read the same at every one of some observations. */
  boolean same(Forecasts other, List<Observation> observations) {
    return observations.stream()
        .allMatch(o -> same(of(o.measure(), o.condition()), other.of(o.measure(), o.condition())));
  }

  private static boolean same(Optional<Forecast> one, Optional<Forecast> other) {
    return one.isPresent()
        && other.isPresent()
        && one.get().sort() == other.get().sort()
        && (one.get().value() == other.get().value()
            || Math.abs(one.get().value() - other.get().value())
                <= SAME * Math.abs(other.get().value()));
  }

  Optional<Forecast> of(Measure measure, Condition condition) {
    var question = new Question(measure, condition);
    Optional<Forecast> known = read.get(question);
    if (known == null) {
      known = instrument.read(bench, measure, condition);
      read.put(question, known);
    }
    return known;
  }
}
