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
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.exercise.Seat;
import org.holewise.engine.part.Kind;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * The parts of an exercise by ref, for checking what names them. Of a part that could not be read
 * only the ref is known, so that a pin on it is not called wrong as well.
 */
final class DeclaredParts {
  private final Map<String, Optional<Part>> byRef = new LinkedHashMap<>();
  private final Map<String, Seat> seats = new LinkedHashMap<>();
  private final boolean known;
  private final Problems problems;

  /** Without a list of parts nothing that names one is called wrong. */
  DeclaredParts(Optional<List<Spotted<DeclaredPart>>> parts, Problems problems) {
    this.problems = problems;
    this.known = parts.isPresent();
    parts.ifPresent(list -> list.forEach(part -> add(part.value())));
  }

  private void add(DeclaredPart declared) {
    declared.ref().ifPresent(ref -> declared.seat().ifPresent(s -> seats.putIfAbsent(ref, s)));
    declared
        .ref()
        .filter(ref -> byRef.putIfAbsent(ref, declared.part()) != null)
        .ifPresent(ref -> say(Place.pointer(declared.at(), "ref"), "ref-taken", ref));
  }

  /** The parts that could be read, in the order written. */
  List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    byRef.values().forEach(part -> part.ifPresent(parts::add));
    return parts;
  }

  /** By ref: where parts are to stand in the schematic's drawing. */
  Map<String, Seat> seats() {
    return seats;
  }

  /** The part of that ref, if it could be read; a ref that no part has is a problem. */
  Optional<Part> part(String ref, String at) {
    if (known && !byRef.containsKey(ref)) {
      say(at, "unknown-ref", ref);
    }
    return byRef.getOrDefault(ref, Optional.empty());
  }

  void checkPin(Pin pin, String at) {
    part(pin.ref(), at)
        .filter(part -> !part.pins().contains(pin))
        .ifPresent(part -> say(at, "unknown-pin", pin, part.ref(), names(part)));
  }

  /** What a voltage of one point is measured against: minus of the first generator. */
  Optional<Probe> ground() {
    return ground(parts());
  }

  static Optional<Probe> ground(List<Part> parts) {
    return parts.stream()
        .filter(part -> part.kind().name().equals("generator"))
        .map(part -> Probe.at(part.pin("-")))
        .findFirst();
  }

  void checkLamp(String ref, String at) {
    part(ref, at)
        .map(Part::kind)
        .filter(kind -> !lights(kind))
        .ifPresent(kind -> say(at, "no-lamp", ref));
  }

  static boolean lights(Kind kind) {
    return kind.name().equals("led");
  }

  private static String names(Part part) {
    return String.join(", ", part.pins().stream().map(Pin::name).toList());
  }

  private void say(String at, String kind, Object... parts) {
    problems.add(Problem.of(at, kind, parts));
  }
}
