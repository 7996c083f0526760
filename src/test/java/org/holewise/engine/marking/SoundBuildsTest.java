package org.holewise.engine.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.holewise.engine.exercise.ExerciseDraft.amps;
import static org.holewise.engine.exercise.ExerciseDraft.seen;
import static org.holewise.engine.exercise.ExerciseDraft.volts;

import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.holewise.engine.board.Build;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.exercise.BenchDraft;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.reading.Judged;
import org.holewise.engine.reading.Meters;
import org.holewise.engine.reading.SoundDraw;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sound builds with parts drawn in tolerance keep every mark and are not accused. */
@Tag("fast")
class SoundBuildsTest {
  private static final long SEED = 20260211;
  private static final int DRAWS = 100;

  /** In at least this many of a hundred draws nothing is the first suspect. */
  private static final int AT_PEACE = 95;

  private record Sound(String name, Exercise exercise, Build build) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Sound> builds() {
    Exercise lamp = Samples.lamp();
    Exercise ladder = Samples.ladder(9);
    Exercise reference = reference();
    Exercise driver = driver();
    return Stream.of(
        sound("lamp", lamp, Samples.lampBuild(lamp)),
        sound("ladder", ladder, Samples.ladderBuild(ladder)),
        sound("reference", reference, referenceBuild(reference)),
        sound("driver", driver, driverBuild(driver)));
  }

  private static Sound sound(String name, Exercise exercise, BenchDraft draft) {
    return new Sound(name, exercise, draft.record().build().orElseThrow());
  }

  private static Exercise reference() {
    return new ExerciseDraft()
        .part("B1", "battery", "volts", 12)
        .part("R1", "resistor", "ohms", 470)
        .part("D1", "zener", "breakdown", ExerciseDraft.fields("volts", 5.1, "ohms", 20))
        .part("R2", "resistor", "ohms", 2.2e3)
        .net("supply", "B1.+ R1.1")
        .net("out", "R1.2 D1.k R2.1")
        .net("return", "D1.a R2.2 B1.-")
        .reading("supply", volts("B1.+", "B1.-"))
        .reading("out", volts("R2.1", "R2.2"))
        .reading("drop", volts("R1.1", "R1.2"))
        .reading("load", amps("R2.1"))
        .exercise();
  }

  private static BenchDraft referenceBuild(Exercise exercise) {
    return new BenchDraft(exercise)
        .place("B1", "+a4 -a4")
        .place("R1", "b8 b13")
        .place("D1", "c17 c13")
        .place("R2", "d13 d17")
        .link("a8", "+a8")
        .link("a17", "-a17");
  }

  private static Exercise driver() {
    return new ExerciseDraft()
        .part("B1", "battery", "volts", 6)
        .part("R1", "resistor", "ohms", 10e3)
        .part("R2", "resistor", "ohms", 220)
        .part("D1", "led", "colour", "green")
        .part("Q1", "npn")
        .net("supply", "B1.+ R1.1 R2.1")
        .net("base", "R1.2 Q1.b")
        .net("lamp", "R2.2 D1.a")
        .net("collector", "D1.k Q1.c")
        .net("return", "Q1.e B1.-")
        .reading("supply", volts("B1.+", "B1.-"))
        .reading("base", volts("Q1.b", "Q1.e"))
        .reading("collector", volts("Q1.c", "Q1.e"))
        .reading("glow", seen("D1"))
        .exercise();
  }

  private static BenchDraft driverBuild(Exercise exercise) {
    return new BenchDraft(exercise)
        .place("B1", "+a3 -a3")
        .place("R1", "c8 c14")
        .place("R2", "h8 h12")
        .place("D1", "i12 i15")
        .place("Q1", "c15 d14 e13")
        .link("a8", "+a8")
        .link("d8", "g8")
        .link("f15", "e15")
        .link("a13", "-a13");
  }

  @ParameterizedTest
  @MethodSource("builds")
  void keepEveryMarkAndAreNotAccused(Sound sound) {
    var random = new Random(SEED);
    var meter = Meters.named("hand-2000").orElseThrow();
    int atPeace = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      Map<String, Written> written = SoundDraw.of(sound.exercise(), meter, random);
      var record =
          new BenchRecord(
              "draft", "hand-2000", Optional.of(sound.build()), written, java.util.List.of());
      Mark mark = Marking.mark(sound.exercise(), record, Priors.start(), Set.of());
      assertThat(mark.wiring().matches()).isTrue();
      assertThat(mark.marks().total())
          .as("%s", mark.readings().stream().map(Judged::verdict).toList())
          .isEqualTo(100);
      atPeace += mark.diagnosis().suspects().get(0).place() instanceof Place.Nowhere ? 1 : 0;
    }
    assertThat(atPeace).isGreaterThanOrEqualTo(AT_PEACE);
  }
}
