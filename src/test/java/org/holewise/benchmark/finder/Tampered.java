package org.holewise.benchmark.finder;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.part.Registry;

/** A build as recorded, being made otherwise by hand. */
final class Tampered {
  /** Resistance of what is open inside (Ω). */
  private static final double NOTHING = 1e14;

  private final Exercise exercise;
  private final List<Part> parts;
  private final Map<String, Map<String, Hole>> holes = new LinkedHashMap<>();
  private final List<Link> links;
  private final Build build;
  private final Map<Pin, Pin> takenFor = new LinkedHashMap<>();
  private int added;

  Tampered(Exercise exercise, Build build) {
    this.exercise = exercise;
    this.build = build;
    parts = new ArrayList<>(exercise.parts());
    links = new ArrayList<>(build.links());
    for (Placed placed : build.placed()) {
      Part part = exercise.part(placed.ref()).orElseThrow();
      holes.put(placed.ref(), new LinkedHashMap<>(placed.seated(part).holes()));
    }
  }

  Tampered moved(Pin pin, Hole hole) {
    holes.get(pin.ref()).put(pin.name(), hole);
    return this;
  }

  /** The lead on a strip of its own, from which so much resistance leads to where it was. */
  Tampered contact(Pin pin, double ohms) {
    Hole was = holes.get(pin.ref()).get(pin.name());
    Hole away = freshStrip();
    moved(pin, away);
    return resistance(away, was, ohms);
  }

  Tampered resistance(Hole one, Hole other, double ohms) {
    if (Double.isFinite(ohms)) {
      String ref = "X" + ++added;
      var fields = new Fields(Map.of("ohms", ohms, "tolerance", 0.0));
      parts.add(new Part(ref, Registry.kind("resistor").orElseThrow(), fields));
      Map<String, Hole> ends = new LinkedHashMap<>();
      ends.put("1", one);
      ends.put("2", other);
      holes.put(ref, ends);
    }
    return this;
  }

  Tampered linkMoved(int link, int end, Hole hole) {
    links.set(link, links.get(link).with(end, hole));
    return this;
  }

  Tampered linkContact(int link, double ohms) {
    Link was = links.get(link);
    Hole away = freshStrip();
    links.set(link, was.with(1, away));
    return resistance(away, was.to(), ohms);
  }

  /** Nothing between the leads any more, each of which still sits in its hole. */
  Tampered openInside(Part part) {
    for (Pin pin : part.pins()) {
      if (hole(pin) != null) {
        contact(pin, NOTHING);
        takenFor.put(pin, new Pin("X" + added, "2"));
      }
    }
    return this;
  }

  Tampered field(String ref, String field, Object value) {
    parts.replaceAll(part -> part.ref().equals(ref) ? part.with(field, value) : part);
    return this;
  }

  /** Each lead sits in the hole of another; probes go where the record has the lead. */
  Tampered exchanged(String ref, Map<String, String> sitsAt) {
    Map<String, Hole> was = Map.copyOf(holes.get(ref));
    sitsAt.forEach(
        (pin, place) -> {
          if (was.containsKey(place)) {
            holes.get(ref).put(pin, was.get(place));
          } else {
            holes.get(ref).remove(pin);
          }
          takenFor.put(new Pin(ref, place), new Pin(ref, pin));
        });
    return this;
  }

  private Hole hole(Pin pin) {
    return holes.getOrDefault(pin.ref(), Map.of()).get(pin.name());
  }

  /** The last column of the first board whose strip nobody uses. */
  private Hole freshStrip() {
    for (int column = build.board().columns(); column > 0; column--) {
      var hole = new Hole(1, "a", column);
      int strip = build.board().stripOrNone(hole);
      boolean used =
          holes.values().stream()
                  .flatMap(leads -> leads.values().stream())
                  .anyMatch(other -> build.board().stripOrNone(other) == strip)
              || links.stream()
                  .anyMatch(
                      link ->
                          build.board().stripOrNone(link.from()) == strip
                              || build.board().stripOrNone(link.to()) == strip);
      if (!used) {
        return hole;
      }
    }
    throw new IllegalStateException("the board is full");
  }

  Truth truth() {
    var placed = new ArrayList<Placed>();
    holes.forEach(
        (ref, leads) ->
            placed.add(new Placed(ref, Map.copyOf(leads), Optional.empty(), Optional.empty())));
    var really =
        new Exercise(
            exercise.slug(),
            exercise.title(),
            exercise.aim(),
            exercise.board(),
            exercise.meter(),
            parts,
            exercise.nets(),
            exercise.conditions(),
            exercise.readings(),
            exercise.allow(),
            exercise.marks());
    return new Truth(really, new Build(build.board(), placed, links), takenFor);
  }
}
