package org.holewise.engine.exercise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.holewise.engine.board.BoardModels;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.part.Registry;

/** An exercise written in a test, line by line as on paper. */
public final class ExerciseDraft {
  private String board = "830-split";
  private final List<Part> parts = new ArrayList<>();
  private final List<Net> nets = new ArrayList<>();
  private final List<Condition> conditions = new ArrayList<>();
  private final List<Reading> readings = new ArrayList<>();
  private Allow allow = Allow.ALL;
  private Scheme scheme = Scheme.USUAL;

  public ExerciseDraft board(String model) {
    board = model;
    return this;
  }

  /** A part: ref, kind, then names and values of its fields in turn. */
  public ExerciseDraft part(String ref, String kind, Object... fields) {
    parts.add(new Part(ref, Registry.kind(kind).orElseThrow(), fields(fields)));
    return this;
  }

  /** Fields by names and values in turn; whole numbers count as numbers. */
  public static Fields fields(Object... namesAndValues) {
    Map<String, Object> values = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      Object value = namesAndValues[i + 1];
      values.put(
          (String) namesAndValues[i], value instanceof Integer whole ? (double) whole : value);
    }
    return new Fields(values);
  }

  /** A net: {@code net("top", "B1.+ R1.1")}. */
  public ExerciseDraft net(String name, String pins) {
    nets.add(
        new Net(name, Stream.of(pins.split(" ")).map(p -> Pin.read(p).orElseThrow()).toList()));
    return this;
  }

  public ExerciseDraft condition(String name, Condition.Setting... set) {
    conditions.add(new Condition(name, List.of(set), OptionalDouble.empty()));
    return this;
  }

  public ExerciseDraft reading(String id, Measure measure) {
    return reading(id, measure, 1);
  }

  public ExerciseDraft reading(String id, Measure measure, double weight) {
    String first = conditions.isEmpty() ? "normal" : conditions.get(0).name();
    return reading(id, measure, first, weight);
  }

  public ExerciseDraft reading(String id, Measure measure, String when, double weight) {
    readings.add(new Reading(id, id, measure, when, weight, Optional.empty()));
    return this;
  }

  public ExerciseDraft allow(Allow what) {
    allow = what;
    return this;
  }

  public ExerciseDraft marks(int wiring, int reading) {
    scheme = new Scheme(wiring, reading);
    return this;
  }

  public static Measure volts(String red, String black) {
    return new Measure.Volts(probe(red), probe(black));
  }

  public static Measure amps(String pin) {
    return new Measure.Amps(Pin.read(pin).orElseThrow());
  }

  public static Measure ohms(String one, String other) {
    return new Measure.Ohms(probe(one), probe(other), false);
  }

  public static Measure alone(String one, String other) {
    return new Measure.Ohms(probe(one), probe(other), true);
  }

  public static Measure joined(String one, String other) {
    return new Measure.Joined(probe(one), probe(other));
  }

  public static Measure seen(String ref) {
    return new Measure.Seen(ref);
  }

  private static Probe probe(String pin) {
    return Probe.at(Pin.read(pin).orElseThrow());
  }

  public Exercise exercise() {
    return new Exercise(
        "draft",
        "Draft",
        "",
        BoardModels.named(board).orElseThrow(),
        "hand-2000",
        parts,
        nets,
        conditions.isEmpty()
            ? List.of(new Condition("normal", List.of(), OptionalDouble.empty()))
            : conditions,
        readings,
        allow,
        scheme);
  }
}
