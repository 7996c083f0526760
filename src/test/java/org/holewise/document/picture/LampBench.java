package org.holewise.document.picture;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.holewise.engine.board.BoardModels;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.Allow;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.exercise.Scheme;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.part.Registry;

/** A lamp, a transistor and a button on one board: parts of every form for lines and drawings. */
public final class LampBench {
  public static final List<Part> PARTS =
      List.of(
          part("B1", "battery", Map.of("volts", 6.0)),
          part("S1", "switch", Map.of("closed", true)),
          part("R1", "resistor", Map.of("ohms", 390.0)),
          part("D1", "led", Map.of("colour", "green")),
          part("Q1", "npn", Map.of()),
          part("K1", "button", Map.of()),
          part("P1", "potentiometer", Map.of("ohms", 10_000.0)));

  public static final Exercise EXERCISE =
      new Exercise(
          "bench-lamp",
          "A lamp at the bench",
          "Light one LED.",
          BoardModels.named("830-split").orElseThrow(),
          "hand-2000",
          PARTS,
          List.of(),
          List.of(
              new Condition("lit", List.of(), OptionalDouble.empty()),
              new Condition("dark", List.of(), OptionalDouble.empty())),
          List.of(
              reading("supply", new Measure.Volts(at("B1", "+"), at("B1", "-"))),
              reading("lamp-volts", new Measure.Volts(at("D1", "a"), at("D1", "k"))),
              reading("loop", new Measure.Amps(new Pin("R1", "1"))),
              reading("glow", new Measure.Seen("D1"))),
          Allow.ALL,
          Scheme.USUAL);

  private LampBench() {}

  /** The lamp loop alone, as its exercise would have it. */
  public static Build lamp() {
    return new Build(
        EXERCISE.board(),
        List.of(
            placed("B1", "+", "+j2", "-", "-a2"),
            placed("S1", "1", "+j6", "2", "j8"),
            placed("R1", "1", "f8", "2", "f12"),
            placed("D1", "a", "g12", "k", "g14")),
        List.of(link("f14", "e14"), link("a14", "-a14")));
  }

  /** Pin names and holes in turn. */
  public static Placed placed(String ref, String... pinsAndHoles) {
    var holes = new LinkedHashMap<String, Hole>();
    for (int i = 0; i < pinsAndHoles.length; i += 2) {
      holes.put(pinsAndHoles[i], hole(pinsAndHoles[i + 1]));
    }
    return new Placed(ref, holes, Optional.empty(), Optional.empty());
  }

  public static Link link(String from, String to) {
    return new Link(hole(from), hole(to));
  }

  public static Hole hole(String text) {
    return Hole.read(text).orElseThrow();
  }

  public static Probe at(String ref, String pin) {
    return Probe.at(new Pin(ref, pin));
  }

  private static Part part(String ref, String kind, Map<String, Object> fields) {
    return new Part(ref, Registry.kind(kind).orElseThrow(), new Fields(fields));
  }

  private static Reading reading(String id, Measure measure) {
    return new Reading(id, id, measure, "lit", 1, Optional.empty());
  }
}
