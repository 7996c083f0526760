package org.holewise.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.document.shape.Place;
import org.holewise.document.shape.Problem;
import org.holewise.document.shape.Problems;
import org.holewise.document.shape.Spotted;
import org.holewise.document.shape.Values;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.BoardModels;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Extra;
import org.holewise.engine.exercise.Written;

/**
 * Reads a build. Only its form is judged here: whether the exercise has such a part, pin or reading
 * is not a matter of form.
 */
final class BuildReader {
  private final Exercise exercise;
  private final Values values;

  private BuildReader(Exercise exercise, Values values) {
    this.exercise = exercise;
    this.values = values;
  }

  /** Names what is wrong, and nothing more: for when there is no exercise to read it for. */
  static void check(Place place) {
    BuildShape.WHOLE
        .read(place)
        .ifPresent(values -> checkExtra(values.get(BuildShape.EXTRA, List.of()), place.problems()));
  }

  /** The record at a place; empty, with problems, where anything about it is wrong. */
  static Optional<BenchRecord> read(Place place, Exercise exercise) {
    int before = place.problems().count();
    var values = BuildShape.WHOLE.read(place);
    values.ifPresent(v -> checkExtra(v.get(BuildShape.EXTRA, List.of()), place.problems()));
    if (DeclaredParts.ground(exercise.parts()).isEmpty()) {
      values.ifPresent(v -> checkGround(v.get(BuildShape.EXTRA, List.of()), place.problems()));
    }
    return values
        .filter(v -> place.problems().count() == before)
        .map(v -> new BuildReader(exercise, v).record());
  }

  private static void checkExtra(List<Spotted<Values>> extra, Problems problems) {
    List<String> taken = new ArrayList<>();
    for (var reading : extra) {
      Measures.ANYWHERE.checkAlone(reading.value(), problems);
      var id = reading.value().get(BuildShape.EXTRA_ID);
      id.filter(taken::contains)
          .map(i -> Problem.of(reading.value().at(BuildShape.EXTRA_ID), "id-taken", i))
          .ifPresent(problems::add);
      id.ifPresent(taken::add);
    }
  }

  private static void checkGround(List<Spotted<Values>> extra, Problems problems) {
    for (var reading : extra) {
      Measures.ANYWHERE
          .groundless(reading.value())
          .forEach(at -> problems.add(Problem.of(at, "no-generator")));
    }
  }

  private BenchRecord record() {
    return new BenchRecord(
        values.get(BuildShape.EXERCISE, ""),
        values.get(BuildShape.METER, exercise.meter()),
        build(),
        readings(),
        values.get(BuildShape.EXTRA, List.of()).stream().map(x -> extra(x.value())).toList());
  }

  private Optional<Build> build() {
    var placed = values.get(BuildShape.PLACED);
    var links = values.get(BuildShape.LINKS);
    if (placed.isEmpty() && links.isEmpty()) {
      return Optional.empty();
    }
    BoardModel board =
        values.get(BuildShape.BOARD).flatMap(BoardModels::named).orElse(exercise.board());
    return Optional.of(
        new Build(
            board,
            placed.orElse(List.of()).stream()
                .map(part -> placed(part.value()))
                .map(part -> exercise.part(part.ref()).map(part::seated).orElse(part))
                .toList(),
            links.orElse(List.of()).stream().map(link -> link(link.value())).toList()));
  }

  private static Placed placed(Values part) {
    Map<String, Hole> holes = new LinkedHashMap<>();
    part.get(BuildShape.HOLES, Map.of()).forEach((pin, hole) -> holes.put(pin, hole.value()));
    return new Placed(
        part.must(BuildShape.REF),
        holes,
        part.get(BuildShape.PIN1),
        part.get(BuildShape.MARKED).map(String::strip));
  }

  private static Link link(List<Spotted<Hole>> ends) {
    return new Link(ends.get(0).value(), ends.get(1).value());
  }

  /** A reading left blank was not taken. */
  private Map<String, Written> readings() {
    Map<String, Written> readings = new LinkedHashMap<>();
    values
        .get(BuildShape.READINGS, Map.of())
        .forEach(
            (id, written) -> {
              if (!written.value().text().isBlank()) {
                readings.put(id, written.value());
              }
            });
    return readings;
  }

  private Extra extra(Values values) {
    return new Extra(
        values.must(BuildShape.EXTRA_ID),
        Measures.ANYWHERE.measure(values, DeclaredParts.ground(exercise.parts())).orElseThrow(),
        Measures.occasion(values, exercise.conditions().get(0).name()),
        values.must(BuildShape.VALUE));
  }
}
