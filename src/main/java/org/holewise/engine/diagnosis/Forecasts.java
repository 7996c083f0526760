package org.holewise.engine.diagnosis;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.reading.Bench;
import org.holewise.engine.reading.Forecast;
import org.holewise.engine.reading.Instrument;

/** What an instrument reads of one bench, each reading taken once. Not for several threads. */
final class Forecasts {
  final Bench bench;
  final Instrument instrument;
  private final Map<Question, Optional<Forecast>> read = new LinkedHashMap<>();

  private record Question(Measure measure, Condition condition) {}

  Forecasts(Bench bench, Instrument instrument) {
    this.bench = bench;
    this.instrument = instrument;
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
