package org.holewise.document;

import java.util.List;
import java.util.Optional;
import org.holewise.document.shape.ChoiceShape;
import org.holewise.document.shape.ListShape;
import org.holewise.document.shape.Member;
import org.holewise.document.shape.Place;
import org.holewise.document.shape.RecordShape;
import org.holewise.document.shape.Shape;
import org.holewise.document.shape.Spotted;
import org.holewise.document.shape.TextShape;
import org.holewise.engine.exercise.Probe;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** {@code {of, to, in}}: each voltage by two points, or by one where the generator is the other. */
final class RatioShape {
  static final String DECIBEL = "dB";
  static final Member<String> IN =
      Member.optional(
              "in", new ChoiceShape(List.of(DECIBEL, "plain")), "In decibels, or plain multiples.")
          .otherwise(DECIBEL);

  final Member<List<Spotted<Probe>>> of;
  final Member<List<Spotted<Probe>>> to;
  final RecordShape whole;

  RatioShape(TextShape<Probe> probe) {
    of = Member.required("of", new Ends(probe), "The voltage that is compared, red lead first.");
    to = Member.required("to", new Ends(probe), "The voltage that it is compared to.");
    whole = RecordShape.of(List.of(of, to, IN));
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
