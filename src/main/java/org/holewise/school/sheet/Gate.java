package org.holewise.school.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.holewise.document.text.Messages;
import org.holewise.document.text.Texts;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.marking.Caution;
import org.holewise.engine.marking.Marking;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.school.sheet.GateAnswer.Stop;

/**
 * Whether a layout may be switched on: a list of rules, each of which may stop it. They look at the
 * layout alone, in every condition of the exercise, and say nothing of a wiring that is wrong
 * without hurting anything.
 */
public final class Gate {
  private static final List<Rule> RULES = List.of(Gate::whatHurts, Gate::whatIsMissing);

  private static final Set<String> KNOWN =
      Set.of(
          "supply-shorted",
          "over-limit",
          "far-over-limit",
          "over-power",
          "reverse-volts",
          "wrong-polarity",
          "over-volts",
          "chip-supply-high",
          "chip-supply-reversed",
          "high-voltage");

  private final Exercise exercise;
  private final BenchRecord record;
  private final Build build;
  private final List<Caution> usual;
  private final List<String> missing;

  /** What speaks against switching on. */
  private interface Rule {
    List<Stop> stops(Gate gate);
  }

  private Gate(Exercise exercise, BenchRecord record, Build build) {
    this.exercise = exercise;
    this.record = record;
    this.build = build;
    this.usual = Marking.cautions(exercise, of(Optional.empty()));
    this.missing = missing();
  }

  /** The answer for a layout; readings are left out of account. */
  public static GateAnswer check(Exercise exercise, BenchRecord layout) {
    return layout
        .build()
        .filter(build -> !build.placed().isEmpty() || !build.links().isEmpty())
        .map(build -> new Gate(exercise, layout, build).answer())
        .orElseGet(() -> nothing(exercise));
  }

  private static GateAnswer nothing(Exercise exercise) {
    var stop = new Stop("empty", "", Said.of("sheet.gate.empty"), List.of());
    var refs = exercise.parts().stream().map(Part::ref).toList();
    return new GateAnswer(List.of(stop), List.of(), refs);
  }

  private GateAnswer answer() {
    var stops = RULES.stream().flatMap(rule -> rule.stops(this).stream()).toList();
    var texts = new Texts(Messages.english(), exercise, Optional.of(build), false);
    var care =
        usual.stream()
            .map(texts::caution)
            .distinct()
            .map(text -> new Warning(text, false))
            .toList();
    return new GateAnswer(stops, care, missing);
  }

  /** What this layout would do and the exercise's own circuit would not. */
  private List<Stop> whatHurts() {
    return cautions(build).stream()
        .filter(caution -> usual.stream().noneMatch(same(caution)))
        .map(this::stop)
        .toList();
  }

  private static Predicate<Caution> same(Caution caution) {
    return other -> other.kind().equals(caution.kind()) && other.ref().equals(caution.ref());
  }

  private Stop stop(Caution caution) {
    List<Hole> path = caution.kind().equals("supply-shorted") ? path(caution) : List.of();
    List<Hole> holes = path.isEmpty() ? new Pointing(Optional.of(build)).part(caution.ref()) : path;
    return new Stop(caution.kind(), caution.ref(), said(caution), holes);
  }

  private static Said said(Caution caution) {
    String key = "sheet.gate." + caution.kind();
    return caution.ref().isEmpty() && caution.kind().equals("supply-shorted")
        ? Said.of(key + ".build")
        : Said.of(KNOWN.contains(caution.kind()) ? key : "sheet.gate.other", caution.ref());
  }

  /** The ends of the links that a short runs through: without any one of them it is gone. */
  private List<Hole> path(Caution caution) {
    return build.links().stream()
        .filter(link -> cautions(without(link)).stream().noneMatch(same(caution)))
        .flatMap(link -> Stream.of(link.from(), link.to()))
        .toList();
  }

  private Build without(Link link) {
    var links = new ArrayList<>(build.links());
    links.remove(link);
    return new Build(build.board(), build.placed(), links);
  }

  private List<Stop> whatIsMissing() {
    return missing.isEmpty()
        ? List.of()
        : List.of(
            new Stop(
                "not-whole",
                "",
                Said.of("sheet.gate.not-whole", String.join(", ", missing)),
                List.of()));
  }

  /** Parts not placed, and leads of placed parts without a hole. */
  private List<String> missing() {
    var missing = new ArrayList<String>();
    for (Part part : exercise.parts()) {
      var placed = build.placed(part.ref());
      if (placed.isEmpty()) {
        missing.add(part.ref());
      } else if (placed.get().pin1().isEmpty()) {
        part.pins().stream()
            .filter(pin -> placed.get().hole(pin.name()).isEmpty())
            .map(Pin::toString)
            .forEach(missing::add);
      }
    }
    return missing;
  }

  private List<Caution> cautions(Build layout) {
    return Marking.cautions(exercise, of(Optional.of(layout)));
  }

  private BenchRecord of(Optional<Build> layout) {
    return new BenchRecord(record.exercise(), record.meter(), layout, Map.of(), List.of());
  }
}
