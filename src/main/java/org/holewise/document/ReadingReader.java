package org.holewise.document;

import static org.holewise.document.Measures.AFTER;
import static org.holewise.document.Measures.WHEN;
import static org.holewise.document.ReadingShape.BAND;
import static org.holewise.document.ReadingShape.ID;
import static org.holewise.document.ReadingShape.LABEL;
import static org.holewise.document.ReadingShape.WEIGHT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.document.shape.Place;
import org.holewise.document.shape.Problem;
import org.holewise.document.shape.Problems;
import org.holewise.document.shape.QuantityShape;
import org.holewise.document.shape.Spotted;
import org.holewise.document.shape.Values;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.exercise.Reading.Limits;

/** Reads the readings of an exercise and checks what they name. */
final class ReadingReader {
  private static final double MOST = 1e12;

  private final DeclaredParts parts;
  private final List<String> conditions;
  private final List<String> clocked;
  private final boolean anyCondition;
  private final Problems problems;
  private final List<String> taken = new ArrayList<>();

  /**
   * @param anyCondition whether the conditions could not be read, so that any name may be right
   */
  ReadingReader(
      DeclaredParts parts, List<Condition> conditions, boolean anyCondition, Problems problems) {
    this.anyCondition = anyCondition;
    this.parts = parts;
    this.conditions = conditions.stream().map(Condition::name).toList();
    this.clocked =
        conditions.stream().filter(c -> c.clock().isPresent()).map(Condition::name).toList();
    this.problems = problems;
  }

  /** The reading, as far as it could be read. */
  Optional<Reading> read(Values values) {
    checkNames(values);
    Measures.AT_PINS.probes(values).forEach(this::checkProbe);
    Measures.AT_PINS.checkAlone(values, problems);
    var seen = Measures.AT_PINS.seen();
    values.get(seen).ifPresent(ref -> parts.checkLamp(ref, values.at(seen)));
    if (parts.ground().isEmpty()) {
      Measures.AT_PINS.groundless(values).forEach(at -> say(at, "no-generator"));
    }
    var measure = Measures.AT_PINS.measure(values, parts.ground());
    var band = measure.flatMap(m -> band(values, m));
    return measure.flatMap(m -> values.get(ID).map(id -> reading(id, values, m, band)));
  }

  private Reading reading(String id, Values values, Measure measure, Optional<Limits> band) {
    return new Reading(
        id,
        values.get(LABEL, id),
        measure,
        Measures.occasion(values, conditions.get(0)),
        values.get(WEIGHT, 1.0),
        band);
  }

  private void checkNames(Values values) {
    values.get(ID).ifPresent(id -> checkId(id, values.at(ID)));
    String when = values.get(WHEN, conditions.get(0));
    if (!anyCondition && !conditions.contains(when)) {
      say(values.at(WHEN), "unknown-condition", when, names());
    } else if (!anyCondition && values.get(AFTER, 0.0) > 0 && !clocked.contains(when)) {
      say(values.at(AFTER), "no-clock", when);
    }
  }

  private void checkId(String id, String at) {
    if (taken.contains(id)) {
      say(at, "id-taken", id);
    }
    taken.add(id);
  }

  private void checkProbe(Spotted<Probe> probe) {
    if (probe.value() instanceof Probe.AtPin at) {
      parts.checkPin(at.pin(), probe.at());
    }
  }

  private Optional<Limits> band(Values values, Measure measure) {
    var ends = values.get(BAND);
    var unit = measure.unit();
    if (ends.isPresent() && unit.isEmpty()) {
      say(values.at(BAND), "band-of-word");
    }
    if (ends.isEmpty() || unit.isEmpty() || ends.get().size() != 2) {
      return Optional.empty();
    }
    var shape = new QuantityShape(unit.get(), -MOST, MOST, List.of());
    var low = end(shape, ends.get().get(0).value());
    var high = end(shape, ends.get().get(1).value());
    if (low.isPresent() && high.isPresent() && low.get() > high.get()) {
      say(values.at(BAND), "band-order");
    }
    return low.flatMap(l -> high.map(h -> new Limits(l, h)));
  }

  private static Optional<Double> end(QuantityShape shape, Place place) {
    return shape.read(place).map(Double.class::cast);
  }

  private String names() {
    return String.join(", ", conditions);
  }

  private void say(String at, String kind, Object... named) {
    problems.add(Problem.of(at, kind, named));
  }
}
