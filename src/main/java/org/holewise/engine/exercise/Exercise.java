package org.holewise.engine.exercise;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * An exercise with concrete values. Immutable. The reader of documents checks that refs and pins
 * exist, that ids are unique and that there is at least one condition; this record does not.
 *
 * @param meter name of the meter model
 * @param conditions at least one; the first is the default
 * @param seats by ref: where its author wants a part in the schematic's drawing; no computation
 *     heeds them
 */
public record Exercise(
    String slug,
    String title,
    String aim,
    BoardModel board,
    String meter,
    List<Part> parts,
    List<Net> nets,
    List<Condition> conditions,
    List<Reading> readings,
    Allow allow,
    Scheme marks,
    Map<String, Seat> seats) {
  public Exercise {
    parts = List.copyOf(parts);
    nets = List.copyOf(nets);
    conditions = List.copyOf(conditions);
    readings = List.copyOf(readings);
    seats = Map.copyOf(seats);
  }

  /** One whose drawing is left to the drawer. */
  public Exercise(
      String slug,
      String title,
      String aim,
      BoardModel board,
      String meter,
      List<Part> parts,
      List<Net> nets,
      List<Condition> conditions,
      List<Reading> readings,
      Allow allow,
      Scheme marks) {
    this(slug, title, aim, board, meter, parts, nets, conditions, readings, allow, marks, Map.of());
  }

  public Optional<Part> part(String ref) {
    return parts.stream().filter(part -> part.ref().equals(ref)).findFirst();
  }

  public List<Pin> pins() {
    return parts.stream().flatMap(part -> part.pins().stream()).toList();
  }

  public Condition condition(String name) {
    return conditions.stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }

  /** The condition of an occasion, so many pulses later and at its frequency. */
  public Condition condition(Occasion occasion) {
    return condition(occasion.when()).on(occasion);
  }

  /** The parts as they stand in a condition: its settings put in. */
  public List<Part> partsIn(Condition condition) {
    return parts.stream()
        .map(
            part -> {
              Part set = part;
              for (var s : condition.set()) {
                if (s.ref().equals(part.ref())) {
                  set = set.with(s.field(), s.value());
                }
              }
              return set;
            })
        .toList();
  }
}
