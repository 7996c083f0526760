package org.holewise.document;

import static org.holewise.document.ExerciseShape.CLOCK;
import static org.holewise.document.ExerciseShape.CONDITION_NAME;
import static org.holewise.document.ExerciseShape.SET;
import static org.holewise.document.ExerciseShape.TEMPERATURE;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.holewise.document.shape.FieldShapes;
import org.holewise.document.shape.Place;
import org.holewise.document.shape.Problem;
import org.holewise.document.shape.Problems;
import org.holewise.document.shape.RecordShape;
import org.holewise.document.shape.Spotted;
import org.holewise.document.shape.Values;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Condition.Setting;
import org.holewise.engine.part.Part;

/** Reads the conditions of an exercise; without any there is one, named {@code normal}. */
final class ConditionReader {
  private static final Condition NORMAL =
      new Condition("normal", List.of(), OptionalDouble.empty());

  private final DeclaredParts parts;
  private final Problems problems;

  ConditionReader(DeclaredParts parts, Problems problems) {
    this.parts = parts;
    this.problems = problems;
  }

  List<Condition> read(List<Spotted<Values>> written) {
    List<Condition> conditions = new ArrayList<>();
    for (var condition : written) {
      conditions.add(read(condition.value(), conditions));
    }
    return conditions.isEmpty() ? List.of(NORMAL) : conditions;
  }

  private Condition read(Values values, List<Condition> before) {
    String name = values.get(CONDITION_NAME, "");
    if (!name.isEmpty() && before.stream().anyMatch(c -> c.name().equals(name))) {
      problems.add(Problem.of(values.at(CONDITION_NAME), "name-taken", name));
    }
    List<Setting> settings = new ArrayList<>();
    values
        .get(SET)
        .ifPresent(
            set -> set.forEach((ref, fields) -> settings.addAll(settings(ref, fields.value()))));
    values.get(CLOCK).ifPresent(pin -> parts.checkPin(pin, values.at(CLOCK)));
    var temperature = values.get(TEMPERATURE);
    return new Condition(
        name,
        settings,
        temperature.isPresent() ? OptionalDouble.of(temperature.get()) : OptionalDouble.empty(),
        values.get(CLOCK));
  }

  private List<Setting> settings(String ref, Place place) {
    return parts.part(ref, place.at()).map(part -> settings(part, place)).orElse(List.of());
  }

  private static List<Setting> settings(Part part, Place place) {
    var fields = part.kind().fields();
    var members = FieldShapes.members(fields).stream().map(member -> member.maybe()).toList();
    return RecordShape.of(List.copyOf(members))
        .read(place)
        .map(values -> FieldShapes.fields(values, fields))
        .map(
            read ->
                read.values().entrySet().stream()
                    .map(entry -> new Setting(part.ref(), entry.getKey(), entry.getValue()))
                    .toList())
        .orElse(List.of());
  }
}
