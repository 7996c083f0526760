package org.holewise.benchmark.finder;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import org.holewise.benchmark.finder.Ailment.Change;
import org.holewise.benchmark.finder.Ailment.How;
import org.holewise.benchmark.finder.Ailment.Slip;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.netlist.AsBuilt;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * All that may be wrong with a build, each with its prior: judgement on what happens at benches
 * (common practice; no published frequencies by kind were found).
 */
final class Ailments {
  private static final double SOUND = 0.30;
  private static final String ROWS = "abcdefghij";

  /** Open contacts: through what is left of them, or not at all (Ω, share). */
  private static final double[][] OPEN = {{1e9, 0.35}, {Double.POSITIVE_INFINITY, 0.15}};

  /** Pieces of the poor ones, 10 Ω to 10 kΩ log-uniform, so that each has a narrow outcome. */
  private static final int POOR = 9;

  private static final int LOW = 8;

  private final Exercise exercise;
  private final Build build;
  private final AsBuilt nets;
  private final Set<Hole> taken = new TreeSet<>();
  private final List<Ailment> all = new ArrayList<>();

  /** One way to be wrong at a place, with its share of the place. */
  private record Way(String kind, double share, Change change, Slip slip) {
    Way(String kind, double share, Change change) {
      this(kind, share, change, Slip.NONE);
    }
  }

  private Ailments(Setup setup) {
    exercise = setup.exercise();
    build = setup.build();
    nets = AsBuilt.of(build, exercise.parts());
    build.placed().forEach(placed -> taken.addAll(placed.holes().values()));
    build.links().forEach(link -> taken.addAll(List.of(link.from(), link.to())));
  }

  static List<Ailment> of(Setup setup) {
    return new Ailments(setup).all();
  }

  private List<Ailment> all() {
    family(0.22, wrongHoles());
    family(0.10, leadContacts());
    family(0.10, linkContacts(false));
    family(0.10, wrongValues());
    family(0.04, exchangedParts());
    family(0.08, linkContacts(true));
    family(0.09, reversed());
    family(0.03, supplies("supply-off", 1, 0, 0));
    family(0.05, supplies("supply-low", LOW, 0.45, 0.95));
    family(0.02, supplies("supply-reversed", 1, -1, -1));
    family(0.10, slips());
    family(0.05, pins());
    family(0.03, touching());
    family(0.03, dead());
    double wrong = all.stream().mapToDouble(Ailment::prior).sum();
    all.replaceAll(one -> one.weighed((1 - SOUND) / wrong));
    all.add(
        0,
        new Ailment("none", List.of(Places.NONE), SOUND, fixed(tampered -> tampered), Slip.NONE));
    return all;
  }

  /** Shares a family evenly over its places, and a place over its ways. */
  private void family(double share, Map<List<String>, List<Way>> places) {
    places.values().removeIf(List::isEmpty);
    places.forEach(
        (place, ways) -> {
          double sum = ways.stream().mapToDouble(Way::share).sum();
          for (Way way : ways) {
            double prior = share / places.size() * way.share() / sum;
            all.add(new Ailment(way.kind(), place, prior, way.change(), way.slip()));
          }
        });
  }

  private static Change fixed(UnaryOperator<Tampered> change) {
    return (tampered, random) -> change.apply(tampered);
  }

  private List<Pin> placedPins() {
    return exercise.pins().stream()
        .filter(pin -> build.placed(pin.ref()).flatMap(p -> p.hole(pin.name())).isPresent())
        .toList();
  }

  private Hole hole(Pin pin) {
    return build.placed(pin.ref()).flatMap(placed -> placed.hole(pin.name())).orElseThrow();
  }

  private boolean chip(Part part) {
    return part.kind().footprint(part.fields()) instanceof Footprint.Dip;
  }

  private Map<List<String>, List<Way>> wrongHoles() {
    Map<List<String>, List<Way>> places = new LinkedHashMap<>();
    for (Pin pin : placedPins()) {
      if (chip(exercise.part(pin.ref()).orElseThrow())) {
        continue;
      }
      Set<Hole> others = around(hole(pin));
      exercise.part(pin.ref()).orElseThrow().pins().stream()
          .filter(other -> !other.equals(pin))
          .forEach(other -> others.add(hole(other)));
      var ways = new ArrayList<Way>();
      for (Hole other : others) {
        free(other)
            .filter(free -> nets.netAt(free) != nets.netAt(hole(pin)))
            .ifPresent(
                free ->
                    ways.add(
                        new Way("wrong-hole", 1, fixed(tampered -> tampered.moved(pin, free)))));
      }
      places.put(List.of(Places.lead(pin.toString())), ways);
    }
    for (int number = 0; number < build.links().size(); number++) {
      int link = number;
      var ways = new ArrayList<Way>();
      for (int end : List.of(0, 1)) {
        for (Hole other : around(build.links().get(link).end(end))) {
          Optional<Hole> free = free(other);
          if (free.isPresent()
              && !nets.with(link, end, free.get())
                  .netlist()
                  .netOf()
                  .equals(nets.netlist().netOf())) {
            ways.add(
                new Way(
                    "wrong-hole", 1, fixed(tampered -> tampered.linkMoved(link, end, free.get()))));
          }
        }
      }
      places.put(List.of(Places.link(link)), ways);
    }
    return places;
  }

  /** A column off either way, across the groove; of a rail, the other of its pair. */
  private static Set<Hole> around(Hole hole) {
    var all = new LinkedHashSet<Hole>();
    if (hole.rail()) {
      char other = hole.track().charAt(0) == '+' ? '-' : '+';
      all.add(new Hole(hole.board(), "" + other + hole.track().charAt(1), hole.column()));
      return all;
    }
    int row = ROWS.indexOf(hole.track());
    all.add(new Hole(hole.board(), hole.track(), hole.column() - 1));
    all.add(new Hole(hole.board(), hole.track(), hole.column() + 1));
    all.add(new Hole(hole.board(), ROWS.substring(9 - row, 10 - row), hole.column()));
    return all;
  }

  /** A free hole of the same strip. */
  private Optional<Hole> free(Hole hole) {
    var strip = build.board().strip(hole);
    return strip.isEmpty()
        ? Optional.empty()
        : build.board().holes(strip.getAsInt()).stream()
            .filter(other -> !taken.contains(other))
            .findFirst();
  }

  private static List<Way> contacts(BiFunction<Tampered, Double, Tampered> bad) {
    var ways = new ArrayList<Way>();
    for (double[] open : OPEN) {
      ways.add(new Way("open-contact", open[1], fixed(tampered -> bad.apply(tampered, open[0]))));
    }
    for (int piece = 0; piece < POOR; piece++) {
      double from = 1 + 3.0 * piece / POOR;
      ways.add(
          new Way(
              "poor-contact",
              0.5 / POOR,
              (tampered, random) ->
                  bad.apply(tampered, Math.pow(10, from + 3.0 / POOR * random.nextDouble()))));
    }
    return ways;
  }

  private Map<List<String>, List<Way>> leadContacts() {
    Map<List<String>, List<Way>> places = new LinkedHashMap<>();
    for (Pin pin : placedPins()) {
      places.put(
          List.of(Places.lead(pin.toString())),
          contacts((tampered, ohms) -> tampered.contact(pin, ohms)));
    }
    return places;
  }

  private Map<List<String>, List<Way>> linkContacts(boolean bridges) {
    Map<List<String>, List<Way>> places = new LinkedHashMap<>();
    for (int i = 0; i < build.links().size(); i++) {
      int number = i;
      Link link = build.links().get(i);
      boolean bridge = link.from().rail() && link.from().track().equals(link.to().track());
      if (bridges && bridge) {
        places.put(
            List.of(Places.link(i)),
            List.of(
                new Way(
                    "rail-gap",
                    1,
                    fixed(tampered -> tampered.linkContact(number, Double.POSITIVE_INFINITY)))));
      } else if (!bridges) {
        places.put(
            List.of(Places.link(i)),
            contacts((tampered, ohms) -> tampered.linkContact(number, ohms)));
      }
    }
    return places;
  }

  private List<Part> resistors() {
    return exercise.parts().stream().filter(part -> part.kind().name().equals("resistor")).toList();
  }

  private Map<List<String>, List<Way>> wrongValues() {
    Map<List<String>, List<Way>> places = new LinkedHashMap<>();
    for (Part part : resistors()) {
      double ohms = part.number("ohms");
      Map<Double, Double> values = new LinkedHashMap<>();
      resistors().forEach(other -> values.put(other.number("ohms"), 3.0));
      values.putIfAbsent(ohms * 10, 2.0);
      values.putIfAbsent(ohms / 10, 2.0);
      values.putIfAbsent(ohms * 100, 1.0);
      values.putIfAbsent(ohms / 100, 1.0);
      values.remove(ohms);
      var ways = new ArrayList<Way>();
      values.forEach(
          (value, share) ->
              ways.add(
                  new Way(
                      "wrong-value",
                      share,
                      fixed(tampered -> tampered.field(part.ref(), "ohms", value)))));
      places.put(List.of(Places.part(part.ref())), ways);
    }
    return places;
  }

  private Map<List<String>, List<Way>> exchangedParts() {
    Map<List<String>, List<Way>> places = new LinkedHashMap<>();
    List<Part> parts = resistors();
    for (int i = 0; i < parts.size(); i++) {
      for (int j = i + 1; j < parts.size(); j++) {
        Part one = parts.get(i);
        Part other = parts.get(j);
        if (one.number("ohms") != other.number("ohms")) {
          places.put(
              List.of(Places.part(one.ref()), Places.part(other.ref())),
              List.of(
                  new Way(
                      "swapped-parts",
                      1,
                      fixed(
                          tampered ->
                              tampered
                                  .field(one.ref(), "ohms", other.number("ohms"))
                                  .field(other.ref(), "ohms", one.number("ohms"))))));
        }
      }
    }
    return places;
  }

  private Map<List<String>, List<Way>> reversed() {
    Map<List<String>, List<Way>> places = new LinkedHashMap<>();
    for (Part part : exercise.parts()) {
      if (List.of("led", "diode", "zener", "electrolytic").contains(part.kind().name())) {
        String one = part.pins().get(0).name();
        String other = part.pins().get(1).name();
        places.put(
            List.of(Places.part(part.ref())),
            List.of(
                new Way(
                    "reversed",
                    1,
                    fixed(
                        tampered ->
                            tampered.exchanged(part.ref(), Map.of(one, other, other, one))))));
      }
    }
    return places;
  }

  private Map<List<String>, List<Way>> supplies(String kind, int pieces, double from, double to) {
    Map<List<String>, List<Way>> places = new LinkedHashMap<>();
    for (Part part : exercise.parts()) {
      if (!part.kind().source()) {
        continue;
      }
      var ways = new ArrayList<Way>();
      for (int piece = 0; piece < pieces; piece++) {
        double start = from + (to - from) * piece / pieces;
        ways.add(
            new Way(
                kind,
                1,
                (tampered, random) -> {
                  double factor = start + (to - from) / pieces * random.nextDouble();
                  part.kind()
                      .scaled(part, factor)
                      .forEach((field, value) -> tampered.field(part.ref(), field, value));
                  return tampered;
                }));
      }
      places.put(List.of(Places.supply(part.ref())), ways);
    }
    return places;
  }

  private Map<List<String>, List<Way>> slips() {
    Map<List<String>, List<Way>> places = new LinkedHashMap<>();
    for (Reading reading : exercise.readings()) {
      if (reading.measure() instanceof Measure.Seen) {
        continue;
      }
      var ways = new ArrayList<Way>();
      ways.add(slip("meter-leads", 0.5, reading, How.NEGATED));
      ways.add(slip("meter-place", 0.5, reading, How.ANYTHING));
      if (reading.measure() instanceof Measure.Amps) {
        ways.add(slip("meter-fuse", 0.5, reading, How.NOTHING));
      }
      places.put(List.of(Places.reading(reading.id())), ways);
    }
    return places;
  }

  private Way slip(String kind, double share, Reading reading, How how) {
    return new Way(kind, share, fixed(tampered -> tampered), new Slip(reading.id(), how));
  }

  private static final int[][] ORDERS = {{2, 1, 0}, {1, 0, 2}, {0, 2, 1}, {1, 2, 0}, {2, 0, 1}};

  private Map<List<String>, List<Way>> pins() {
    Map<List<String>, List<Way>> places = new LinkedHashMap<>();
    for (Part part : exercise.parts()) {
      List<String> names = part.kind().pins(part.fields());
      var ways = new ArrayList<Way>();
      if (part.kind().name().equals("npn") || part.kind().name().equals("pnp")) {
        for (int[] order : ORDERS) {
          Map<String, String> sitsAt = new LinkedHashMap<>();
          for (int i = 0; i < 3; i++) {
            sitsAt.put(names.get(order[i]), names.get(i));
          }
          double share = order == ORDERS[0] ? 3 : 1;
          ways.add(
              new Way(
                  "swapped-pins",
                  share,
                  fixed(tampered -> tampered.exchanged(part.ref(), sitsAt))));
        }
      } else if (chip(part)) {
        Map<String, String> sitsAt = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
          sitsAt.put(names.get(i), names.get((i + names.size() / 2) % names.size()));
        }
        ways.add(
            new Way("turned-round", 1, fixed(tampered -> tampered.exchanged(part.ref(), sitsAt))));
      }
      places.put(List.of(Places.part(part.ref())), ways);
    }
    return places;
  }

  private Map<List<String>, List<Way>> touching() {
    Map<List<String>, List<Way>> places = new LinkedHashMap<>();
    Map<Integer, Hole> strips = new LinkedHashMap<>();
    taken.stream()
        .filter(hole -> !hole.rail())
        .forEach(hole -> strips.putIfAbsent(build.board().stripOrNone(hole), hole));
    strips.forEach(
        (strip, hole) -> {
          Hole next = new Hole(hole.board(), hole.track(), hole.column() + 1);
          int other = build.board().stripOrNone(next);
          if (strips.containsKey(other) && nets.netAt(hole) != nets.netAt(strips.get(other))) {
            places.put(
                List.of(Places.strips(Math.min(strip, other), Math.max(strip, other))),
                List.of(
                    new Way(
                        "touching", 1, fixed(tampered -> tampered.resistance(hole, next, 0.02)))));
          }
        });
    return places;
  }

  /** Share of failures that are open (MIL-HDBK-338B, from memory; a resistor's is judged). */
  private static final Map<String, Double> OPENS =
      Map.of("led", 0.70, "diode", 24 / 42.0, "npn", 0.27, "pnp", 0.27, "resistor", 0.9);

  private Map<List<String>, List<Way>> dead() {
    Map<List<String>, List<Way>> places = new LinkedHashMap<>();
    for (Part part : exercise.parts()) {
      Double open = OPENS.get(part.kind().name());
      if (open == null) {
        continue;
      }
      List<Pin> pins = part.pins();
      places.put(
          List.of(Places.part(part.ref())),
          List.of(
              new Way("dead-open", open, fixed(tampered -> tampered.openInside(part))),
              new Way(
                  "dead-short",
                  1 - open,
                  fixed(
                      tampered ->
                          tampered.resistance(
                              hole(pins.get(0)), hole(pins.get(pins.size() - 1)), 0.02)))));
    }
    return places;
  }
}
