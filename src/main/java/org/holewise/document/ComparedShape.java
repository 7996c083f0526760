package org.holewise.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.document.shape.ChoiceShape;
import org.holewise.document.shape.ListShape;
import org.holewise.document.shape.Member;
import org.holewise.document.shape.Place;
import org.holewise.document.shape.RecordShape;
import org.holewise.document.shape.Shape;
import org.holewise.document.shape.Spotted;
import org.holewise.document.shape.TextShape;
import org.holewise.document.shape.Values;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * {@code {of, to}} and what there is to choose: each voltage by two points, or by one where the
 * generator is the other.
 */
final class ComparedShape {
  private static final Map<String, String> SAYS =
      Map.of(
          "ratio", "In decibels, or plain multiples.",
          "corner", "Above the frequency where the ratio is greatest, or below it.");

  final String key;
  final Member<List<Spotted<Probe>>> of;
  final Member<List<Spotted<Probe>>> to;
  final List<Member<String>> choice;
  final RecordShape whole;

  ComparedShape(String key, TextShape<Probe> probe) {
    this.key = key;
    of = Member.required("of", new Ends(probe), "The voltage that is compared, red lead first.");
    to = Member.required("to", new Ends(probe), "The voltage that it is compared to.");
    choice = choice(key).stream().toList();
    var members = new ArrayList<Member<?>>(List.of(of, to));
    members.addAll(choice);
    whole = RecordShape.of(members);
  }

  private static Optional<Member<String>> choice(String key) {
    List<String> choices = Measure.Compared.choices(key);
    return choices.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Member.optional(field(key), new ChoiceShape(choices), SAYS.getOrDefault(key, ""))
                .otherwise(choices.get(0)));
  }

  List<Member<List<Spotted<Probe>>>> ends() {
    return List.of(of, to);
  }

  /** The member that holds what there is to choose. */
  static String field(String key) {
    return key.equals("ratio") ? "in" : "end";
  }

  /** What was chosen; the usual where nothing is said. */
  String chosen(Values values) {
    return choice.stream()
        .map(member -> values.get(member, Measure.Compared.choices(key).get(0)))
        .findFirst()
        .orElse("");
  }

  /** Two points, or one point against the generator's minus. */
  private record Ends(TextShape<Probe> probe) implements Shape<List<Spotted<Probe>>> {

    private ListShape<Probe> two() {
      return new ListShape<>(probe, 2, 2, true);
    }

    @Override
    public Optional<List<Spotted<Probe>>> read(Place place) {
      return place.node().isString()
          ? probe.read(place).map(value -> List.of(new Spotted<>(place.at(), value)))
          : two().read(place);
    }

    @Override
    public ObjectNode schema() {
      var schema = JsonNodeFactory.instance.objectNode();
      schema.putArray("anyOf").add(probe.schema()).add(two().schema());
      return schema;
    }
  }
}
