package org.holewise.engine.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Finding;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.exercise.Allow;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Occasion;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.part.Pin;
import org.holewise.engine.reading.Judged;
import org.holewise.engine.reading.Shown;
import org.holewise.engine.reading.Verdict;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A counter with its lamps, stepped by hand, down the whole road. */
@Tag("fast")
class ChipsTest {
  private static final String[] LAMPS = {"3", "4", "5", "6"};

  private static Exercise counter() {
    var draft =
        new ExerciseDraft()
            .part("B1", "supply", "volts", 5, "limit", 0.1)
            .part("U1", "74393")
            .part("S1", "button")
            .part("R9", "resistor", "ohms", 10_000)
            .net("plus", "B1.+ U1.14 R9.1")
            .net("clock", "R9.2 S1.1 U1.1")
            .net("ground", "B1.- U1.7 S1.2 U1.2 U1.12 U1.13 D0.k D1.k D2.k D3.k");
    for (int bit = 0; bit < LAMPS.length; bit++) {
      draft
          .part("R" + bit, "resistor", "ohms", 1000)
          .part("D" + bit, "led")
          .net("q" + bit, "U1." + LAMPS[bit] + " R" + bit + ".1")
          .net("lamp" + bit, "R" + bit + ".2 D" + bit + ".a");
    }
    return clocked(draft.exercise());
  }

  /** With a clock, and readings of every bit after some pulses. */
  private static Exercise clocked(Exercise plain) {
    var condition =
        new Condition("run", List.of(), OptionalDouble.empty(), Optional.of(new Pin("U1", "1")));
    var readings = new java.util.ArrayList<Reading>();
    for (int bit = 0; bit < LAMPS.length; bit++) {
      readings.add(reading("q" + bit, new Measure.Level(new Pin("U1", LAMPS[bit]))));
      readings.add(reading("d" + bit, new Measure.Seen("D" + bit)));
    }
    readings.add(reading("v0", ExerciseDraft.volts("U1.3", "U1.7")));
    return new Exercise(
        plain.slug(),
        plain.title(),
        plain.aim(),
        plain.board(),
        plain.meter(),
        plain.parts(),
        plain.nets(),
        List.of(condition),
        readings,
        Allow.ALL,
        plain.marks());
  }

  private static Reading reading(String id, Measure measure) {
    return new Reading(
        id, id, measure, new Occasion("run", 5, OptionalDouble.empty()), 1, Optional.empty());
  }

  private static Placed placed(String ref, String... pinsAndHoles) {
    Map<String, Hole> holes = new LinkedHashMap<>();
    for (int i = 0; i < pinsAndHoles.length; i += 2) {
      holes.put(pinsAndHoles[i], hole(pinsAndHoles[i + 1]));
    }
    return new Placed(ref, holes, Optional.empty(), Optional.empty());
  }

  private static Hole hole(String text) {
    return Hole.read(text).orElseThrow();
  }

  private static Link link(String from, String to) {
    return new Link(hole(from), hole(to));
  }

  /** Pins 1 to 7 in e20 to e26, 14 to 8 in f20 to f26, when pin 1 is in e20. */
  private static Build build(Exercise exercise, String pin1) {
    var placed = new java.util.ArrayList<Placed>();
    placed.add(placed("B1", "+", "+a3", "-", "-a3"));
    placed.add(
        new Placed("U1", Map.of(), Optional.of(hole(pin1)), Optional.empty())
            .seated(exercise.part("U1").orElseThrow()));
    placed.add(placed("S1", "1", "e10", "1a", "f10", "2", "e12", "2a", "f12"));
    placed.add(placed("R9", "1", "+a9", "2", "b10"));
    for (int bit = 0; bit < LAMPS.length; bit++) {
      int far = 30 + 4 * bit;
      placed.add(placed("R" + bit, "1", "b" + (22 + bit), "2", "b" + far));
      placed.add(placed("D" + bit, "a", "c" + far, "k", "c" + (far + 2)));
    }
    var links = new java.util.ArrayList<Link>();
    links.add(link("c10", "b20"));
    links.add(link("a12", "-a11"));
    links.add(link("a21", "-a20"));
    links.add(link("a26", "-a26"));
    links.add(link("j20", "g3"));
    links.add(link("a3", "+a5"));
    links.add(link("f3", "b3"));
    links.add(link("h22", "f14"));
    links.add(link("h21", "g14"));
    links.add(link("c14", "-a14"));
    links.add(link("h14", "b14"));
    for (int bit = 0; bit < LAMPS.length; bit++) {
      int column = 32 + 4 * bit;
      links.add(link("a" + column, "-a" + (column == 32 ? 31 : column)));
    }
    links.add(link("-a30", "-a34"));
    return new Build(exercise.board(), placed, links);
  }

  private static Mark mark(Exercise exercise, Build build, Map<String, Written> readings) {
    return Marking.mark(
        exercise,
        new BenchRecord(exercise.slug(), exercise.meter(), Optional.of(build), readings, List.of()),
        Priors.start(),
        Set.of());
  }

  private static Map<String, Written> five() {
    Map<String, Written> readings = new LinkedHashMap<>();
    String[] levels = {"H", "L", "H", "L"};
    for (int bit = 0; bit < levels.length; bit++) {
      readings.put("q" + bit, Written.text(levels[bit]));
      readings.put("d" + bit, Written.text(levels[bit].equals("H") ? "lit" : "dark"));
    }
    readings.put("v0", Written.text("4.82 V"));
    return readings;
  }

  @Test
  void aSoundCounterMarksFullAfterFivePulses() {
    Exercise exercise = counter();
    Mark mark = mark(exercise, build(exercise, "e20"), five());
    assertThat(mark.findings()).isEmpty();
    assertThat(mark.wiring().matches()).as("%s", mark.wiring().differences()).isTrue();
    assertThat(mark.readings()).extracting(Judged::verdict).containsOnly(Verdict.WITHIN);
    assertThat(mark.cautions()).isEmpty();
    assertThat(mark.marks().total()).isEqualTo(100);
  }

  @Test
  void aWrongLevelIsOutside() {
    Exercise exercise = counter();
    Map<String, Written> readings = five();
    readings.put("q1", Written.text("H"));
    Mark mark = mark(exercise, build(exercise, "e20"), readings);
    Judged q1 = mark.readings().get(2);
    assertThat(q1.verdict()).isEqualTo(Verdict.OUTSIDE);
    assertThat(q1.asBuilt().orElseThrow().shown()).isEqualTo(new Shown.Word("L"));
  }

  @Test
  void aChipTurnedRoundIsOneRepairAndSaysWhereItsFirstPinGoes() {
    Exercise exercise = counter();
    Mark mark = mark(exercise, build(exercise, "f26"), Map.of());
    assertThat(mark.wiring().differences()).hasSize(1);
    assertThat(mark.findings()).extracting(Finding::kind).contains("chip-turned");
  }

  @Test
  void aChipShiftedByAColumnIsOneRepair() {
    Exercise exercise = counter();
    Mark mark = mark(exercise, build(exercise, "e19"), Map.of());
    assertThat(mark.wiring().differences()).hasSize(1);
    assertThat(mark.findings()).extracting(Finding::kind).contains("chip-shifted");
  }

  @Test
  void aCountThatIsOneTooManyIsLaidToABouncingContact() {
    Exercise exercise = counter();
    Map<String, Written> readings = five();
    readings.put("q0", Written.text("L"));
    readings.put("d0", Written.text("dark"));
    readings.put("q1", Written.text("H"));
    readings.put("d1", Written.text("lit"));
    readings.put("v0", Written.text("0.00 V"));
    Mark mark = mark(exercise, build(exercise, "e20"), readings);
    assertThat(mark.diagnosis().suspects().subList(0, 3))
        .flatExtracting(suspect -> suspect.kinds())
        .extracting(guess -> guess.kind())
        .contains("bounce");
  }
}
