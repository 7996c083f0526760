package org.holewise.engine.part;

import java.util.List;
import java.util.Map;

/**
 * A kind of part. One file and one line in the {@link Registry} add one. Stateless.
 *
 * <p>A kind knows nothing of boards, readings or marks: it says which pins and fields a part has,
 * which of its pins may trade places, and how it conducts.
 */
public interface Kind {

  /** As written in an exercise, such as {@code resistor}. */
  String name();

  /** The fields an exercise may give, in the order of the schema. */
  List<Field> fields();

  /** Data-sheet names of the pins, in order. */
  List<String> pins(Fields fields);

  /** Stamps the part into the network: its law. */
  void connect(Part part, Network network);

  /**
   * Ways to exchange pins that leave the circuit as it is, the identity left out: each maps every
   * pin to the one it stands in for.
   */
  default List<Map<String, String>> exchanges(Fields fields) {
    return List.of();
  }

  /** Groups of pins that are one piece of metal inside the part. */
  default List<List<String>> twins(Fields fields) {
    return List.of();
  }

  /** Whether it feeds the circuit: a battery or a supply. */
  default boolean source() {
    return false;
  }

  /** What it feeds steadily: nothing where it is no source, or one that swings. */
  default List<Feed> feeds(Part part) {
    return source() && !swings()
        ? List.of(
            new Feed(
                part.pins().get(0).name(),
                part.pins().get(1).name(),
                part.fields().number("volts", 0)))
        : List.of();
  }

  /** Whether what it feeds swings. */
  default boolean swings() {
    return false;
  }

  /** The fields of a source that gives so many times its voltage; empty for anything else. */
  default Map<String, Object> scaled(Part part, double factor) {
    return Map.of();
  }

  /** Whether it has two pins that differ, so that it can be put in the wrong way round. */
  default boolean polar() {
    return false;
  }

  Footprint footprint(Fields fields);

  /** What its pins are for, in the order in which a symbol has them from the top. */
  default List<Leg> legs(Fields fields) {
    return pins(fields).stream().map(Leg::plain).toList();
  }

  /** What it stands at most. */
  default List<Limit> limits(Part part) {
    return List.of();
  }
}
