package org.holewise.document;

import static org.holewise.document.ExerciseShape.AIM;
import static org.holewise.document.ExerciseShape.ALLOW;
import static org.holewise.document.ExerciseShape.BOARD;
import static org.holewise.document.ExerciseShape.CONDITIONS;
import static org.holewise.document.ExerciseShape.EQUAL_PARTS;
import static org.holewise.document.ExerciseShape.EXTRA_LINKS;
import static org.holewise.document.ExerciseShape.FOR_READINGS;
import static org.holewise.document.ExerciseShape.FOR_WIRING;
import static org.holewise.document.ExerciseShape.HIGH_VOLTAGE;
import static org.holewise.document.ExerciseShape.MARKS;
import static org.holewise.document.ExerciseShape.METER;
import static org.holewise.document.ExerciseShape.NETS;
import static org.holewise.document.ExerciseShape.NOTES;
import static org.holewise.document.ExerciseShape.PARTS;
import static org.holewise.document.ExerciseShape.SERIES_ORDER;
import static org.holewise.document.ExerciseShape.SLUG;
import static org.holewise.document.ExerciseShape.TITLE;
import static org.holewise.document.ExerciseShape.USUAL_METER;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.document.shape.Place;
import org.holewise.document.shape.Problem;
import org.holewise.document.shape.Problems;
import org.holewise.document.shape.Spotted;
import org.holewise.document.shape.Values;
import org.holewise.engine.board.BoardModels;
import org.holewise.engine.exercise.Allow;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.exercise.Scheme;
import org.holewise.engine.marking.Danger;
import org.holewise.engine.part.Pin;
import org.holewise.engine.quantity.Display;
import org.holewise.engine.quantity.Unit;

/**
 * Reads an exercise in two passes: the shape of every place, then what places say of each other.
 * The second works on whatever the first could read, so that all problems come at once.
 */
final class ExerciseReader {
  private final Place place;
  private final Values values;
  private final Problems problems;
  private final DeclaredParts parts;

  private ExerciseReader(Place place, Values values) {
    this.place = place;
    this.values = values;
    this.problems = place.problems();
    this.parts = new DeclaredParts(values.get(PARTS), problems);
  }

  /** The exercise at a place; empty, with problems, where anything about it is wrong. */
  static Optional<PreparedExercise> read(Place place) {
    int before = place.problems().count();
    return ExerciseShape.WHOLE
        .read(place)
        .flatMap(values -> new ExerciseReader(place, values).read(before));
  }

  private Optional<PreparedExercise> read(int before) {
    checkNets();
    var conditions = new ConditionReader(parts, problems).read(values.get(CONDITIONS, List.of()));
    var readings = readings(conditions);
    checkMarks();
    if (problems.count() > before) {
      return Optional.empty();
    }
    Exercise exercise = exercise(conditions, readings);
    checkVolts(exercise);
    return problems.count() == before
        ? Optional.of(new PreparedExercise(exercise, notes()))
        : Optional.empty();
  }

  /** Above 30 V only with leave. */
  private void checkVolts(Exercise exercise) {
    boolean leave = values.get(ALLOW).map(allow -> allow.get(HIGH_VOLTAGE, false)).orElse(false);
    double volts = leave ? 0 : Danger.greatestVolts(exercise);
    if (volts > Danger.MOST_VOLTS) {
      problems.add(
          Problem.of(
              Place.pointer(place.at(), PARTS.name()),
              "high-voltage",
              Display.reading(volts, Unit.VOLT)));
    }
  }

  private void checkNets() {
    Map<Pin, String> on = new LinkedHashMap<>();
    values
        .get(NETS, Map.of())
        .forEach(
            (name, pins) -> {
              for (var pin : pins.value()) {
                parts.checkPin(pin.value(), pin.at());
                String other = on.putIfAbsent(pin.value(), name);
                if (other != null && !other.equals(name)) {
                  problems.add(Problem.of(pin.at(), "pin-on-two-nets", pin.value(), other));
                }
              }
            });
  }

  private List<Reading> readings(List<Condition> conditions) {
    boolean unreadable = place.node().has(CONDITIONS.name()) && values.get(CONDITIONS).isEmpty();
    var reader = new ReadingReader(parts, conditions, unreadable, problems);
    return values.get(ReadingShape.READINGS, List.of()).stream()
        .map(reading -> reader.read(reading.value()))
        .flatMap(Optional::stream)
        .toList();
  }

  private void checkMarks() {
    values
        .get(MARKS)
        .filter(marks -> marks.get(FOR_WIRING, 1.0) + marks.get(FOR_READINGS, 1.0) == 0)
        .ifPresent(marks -> problems.add(Problem.of(marks.at(), "no-marks")));
  }

  private Exercise exercise(List<Condition> conditions, List<Reading> readings) {
    String slug = values.must(SLUG);
    return new Exercise(
        slug,
        values.get(TITLE, slug),
        values.get(AIM, "").strip(),
        BoardModels.named(values.must(BOARD)).orElseThrow(),
        values.get(METER, USUAL_METER),
        parts.parts(),
        nets(),
        conditions,
        readings,
        values.get(ALLOW).map(ExerciseReader::allow).orElse(Allow.ALL),
        values.get(MARKS).map(ExerciseReader::scheme).orElse(Scheme.USUAL),
        parts.seats());
  }

  private List<Net> nets() {
    return values.must(NETS).entrySet().stream()
        .map(
            net ->
                new Net(net.getKey(), net.getValue().value().stream().map(Spotted::value).toList()))
        .toList();
  }

  private static Allow allow(Values allow) {
    return new Allow(
        allow.get(SERIES_ORDER, true), allow.get(EQUAL_PARTS, true), allow.get(EXTRA_LINKS, true));
  }

  private static Scheme scheme(Values marks) {
    return new Scheme(marks.must(FOR_WIRING).intValue(), marks.must(FOR_READINGS).intValue());
  }

  private List<String> notes() {
    return values.get(NOTES, List.of()).stream().map(note -> note.value().strip()).toList();
  }
}
