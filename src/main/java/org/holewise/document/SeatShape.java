package org.holewise.document;

import java.util.List;
import java.util.Optional;
import org.holewise.document.shape.FlagShape;
import org.holewise.document.shape.ListShape;
import org.holewise.document.shape.Member;
import org.holewise.document.shape.NumberShape;
import org.holewise.document.shape.Place;
import org.holewise.document.shape.RecordShape;
import org.holewise.document.shape.Shape;
import org.holewise.document.shape.Spotted;
import org.holewise.document.shape.Values;
import org.holewise.engine.exercise.Seat;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Where a part is to stand in the schematic's drawing. */
final class SeatShape {

  /** Cells of a drawing either way; a wider one could not be read on any page. */
  private static final int MOST_CELLS = 100;

  private static final Member<List<Spotted<Double>>> AT =
      Member.required(
          "at",
          new ListShape<>(new NumberShape(0, MOST_CELLS, true), 2, 2, false),
          "Column and row of its middle, from 0, in steps of 40 px.");
  private static final Member<Integer> TURN =
      Member.optional(
              "turn",
              new Quarter(),
              "Degrees clockwise from lying with the first pin left; transistors and potentiometers"
                  + " stand, chips have inputs left.")
          .otherwise(0);
  private static final Member<Boolean> MIRROR =
      Member.optional("mirror", new FlagShape(), "Left and right exchanged before it is turned.")
          .otherwise(false);

  static final Member<Values> SEAT =
      Member.optional(
          "drawn",
          RecordShape.of(List.of(AT, TURN, MIRROR)),
          "Where it stands in the schematic's drawing; left to the drawing where not given.");

  private SeatShape() {}

  static Seat seat(Values values) {
    List<Integer> at = values.must(AT).stream().map(Spotted::value).map(Double::intValue).toList();
    return new Seat(at.get(0), at.get(1), values.get(TURN, 0), values.get(MIRROR, false));
  }

  /** Degrees of a number of quarters. */
  private record Quarter() implements Shape<Integer> {
    private static final List<Integer> DEGREES = List.of(0, 90, 180, 270);

    @Override
    public Optional<Integer> read(Place place) {
      if (!place.node().isNumber()) {
        return place.wrong("not-number");
      }
      double degrees = place.node().doubleValue();
      Optional<Integer> quarter = DEGREES.stream().filter(known -> known == degrees).findFirst();
      return quarter.isPresent()
          ? quarter
          : place.wrong(
              "not-a-choice",
              place.node().asString(),
              String.join(", ", DEGREES.stream().map(String::valueOf).toList()));
    }

    @Override
    public ObjectNode schema() {
      var schema = JsonNodeFactory.instance.objectNode();
      DEGREES.forEach(schema.putArray("enum")::add);
      return schema;
    }
  }
}
