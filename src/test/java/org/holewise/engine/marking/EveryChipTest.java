package org.holewise.engine.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.holewise.document.picture.BoardPicture;
import org.holewise.document.picture.Highlight;
import org.holewise.document.picture.View;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Kind;
import org.holewise.engine.part.Limit;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Registry;
import org.holewise.engine.reading.Verdict;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every chip that has a supply: placed, drawn, read and marked once. */
class EveryChipTest {

  static Stream<String> chips() {
    return Registry.kinds().stream()
        .filter(kind -> kind.footprint(Fields.NONE) instanceof Footprint.Dip)
        .filter(kind -> supply(kind).isPresent())
        .map(Kind::name);
  }

  private static Optional<Limit.Supply> supply(Kind kind) {
    return kind.limits(new Part("U1", kind, Fields.NONE)).stream()
        .filter(limit -> limit instanceof Limit.Supply)
        .map(limit -> (Limit.Supply) limit)
        .findFirst();
  }

  private static Hole hole(String text) {
    return Hole.read(text).orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("chips")
  void aChipOnItsSupplyIsPlacedDrawnReadAndMarked(String name) {
    Kind kind = Registry.kind(name).orElseThrow();
    Limit.Supply pins = supply(kind).orElseThrow();
    Exercise exercise =
        new ExerciseDraft()
            .part("B1", "supply", "volts", 5, "limit", 0.1)
            .part("U1", name)
            .net("plus", "B1.+ U1." + pins.plus())
            .net("minus", "B1.- U1." + pins.minus())
            .reading("supply", ExerciseDraft.volts("U1." + pins.plus(), "U1." + pins.minus()))
            .exercise();
    Placed chip =
        new Placed("U1", Map.of(), Optional.of(hole("e20")), Optional.empty())
            .seated(exercise.part("U1").orElseThrow());
    Map<String, Hole> battery = new LinkedHashMap<>();
    battery.put("+", hole("+a3"));
    battery.put("-", hole("-a3"));
    var build =
        new Build(
            exercise.board(),
            List.of(new Placed("B1", battery, Optional.empty(), Optional.empty()), chip),
            List.of(
                new Link(beside(chip, pins.plus()), hole("+a9")),
                new Link(beside(chip, pins.minus()), hole("-a9"))));
    Mark mark =
        Marking.mark(
            exercise,
            new BenchRecord(
                exercise.slug(),
                exercise.meter(),
                Optional.of(build),
                Map.of("supply", Written.text("5.00 V")),
                List.of()),
            Priors.start(),
            Set.of());
    assertThat(mark.wiring().matches()).isTrue();
    assertThat(mark.readings().get(0).verdict()).isEqualTo(Verdict.WITHIN);
    assertThat(mark.findings()).isEmpty();
    assertThat(mark.marks().total()).isEqualTo(100);
    for (View view : View.values()) {
      var picture = BoardPicture.of(build, exercise.parts(), Highlight.NONE, view, false);
      assertThat(picture.leads()).hasSize(chip.holes().size() + 2);
      assertThat(picture.bodies()).extracting(BoardPicture.Body::ref).contains("U1");
      for (var label : picture.labels()) {
        assertThat(picture.labels().stream().filter(l -> l.extent().shared(label.extent()) > 0))
            .hasSize(1);
      }
    }
  }

  /** A free hole of a pin's strip. */
  private static Hole beside(Placed chip, String pin) {
    Hole own = chip.hole(pin).orElseThrow();
    return new Hole(1, own.track().equals("e") ? "a" : "j", own.column());
  }
}
