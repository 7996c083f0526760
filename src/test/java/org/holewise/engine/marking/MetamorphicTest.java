package org.holewise.engine.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.exercise.BenchDraft;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.reading.Judged;
import org.holewise.engine.reading.Shown;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must not change a mark, and what must change it in a known way. */
@Tag("fast")
class MetamorphicTest {
  private static final Exercise LAMP = Samples.lamp();
  private static final Exercise LADDER = Samples.ladder(9);

  /** Rounding of the solver's, far below a count of any meter. */
  private static final double SAME = 1e-9;

  private record Case(String name, Exercise exercise, BenchRecord record) {
    @Override
    public String toString() {
      return name;
    }
  }

  /** Sound builds and faulty ones. */
  static Stream<Case> cases() {
    BenchRecord lamp = Samples.read(LAMP, Samples.lampBuild(LAMP));
    BenchRecord ladder = Samples.read(LADDER, Samples.ladderBuild(LADDER));
    return Stream.of(
        new Case("sound lamp", LAMP, lamp),
        new Case("sound ladder", LADDER, ladder),
        new Case(
            "lamp a column off",
            LAMP,
            Samples.readAsBuilt(
                LAMP, Transformed.withLead(lamp, "R1", "2", BenchDraft.hole("d15")))),
        new Case(
            "ladder in the next strip",
            LADDER,
            Samples.readAsBuilt(
                LADDER, Transformed.withLead(ladder, "R4", "1", BenchDraft.hole("h19")))));
  }

  private static Mark mark(Exercise exercise, BenchRecord record) {
    return Marking.mark(exercise, record, Priors.start(), Set.of());
  }

  private static void same(Mark one, Mark other) {
    assertThat(other.marks()).isEqualTo(one.marks());
    assertThat(other.wiring().score()).isEqualTo(one.wiring().score());
    assertThat(other.wiring().differences()).hasSameSizeAs(one.wiring().differences());
    assertThat(verdicts(other)).isEqualTo(verdicts(one));
  }

  private static void sameSuspects(Mark one, Mark other) {
    List<Double> before = probabilities(one);
    List<Double> after = probabilities(other);
    assertThat(after).hasSameSizeAs(before);
    for (int i = 0; i < before.size(); i++) {
      assertThat(after.get(i)).isCloseTo(before.get(i), within(1e-6));
    }
  }

  private static List<String> verdicts(Mark mark) {
    return mark.readings().stream().map(Judged::verdict).map(v -> v.key()).toList();
  }

  private static List<Double> probabilities(Mark mark) {
    return mark.diagnosis().suspects().stream().map(Suspect::probability).toList();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void shiftingAllByAColumnChangesNothing(Case sample) {
    Mark before = mark(sample.exercise(), sample.record());
    Mark after = mark(sample.exercise(), Transformed.shifted(sample.record(), 1));
    same(before, after);
    sameSuspects(before, after);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void mirroringAcrossTheGrooveChangesNothing(Case sample) {
    Mark before = mark(sample.exercise(), sample.record());
    Mark after = mark(sample.exercise(), Transformed.mirrored(sample.record()));
    same(before, after);
    sameSuspects(before, after);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void otherNamesChangeNothing(Case sample) {
    Mark before = mark(sample.exercise(), sample.record());
    Exercise renamed = renamed(sample.exercise());
    var build = sample.record().build().orElseThrow();
    var placed =
        build.placed().stream()
            .map(
                p ->
                    new org.holewise.engine.board.Placed(
                        name(p.ref()), p.holes(), p.pin1(), p.marked()))
            .toList();
    BenchRecord record =
        Transformed.with(
            sample.record(),
            new org.holewise.engine.board.Build(build.board(), placed, build.links()));
    Mark after = mark(renamed, record);
    same(before, after);
    sameSuspects(before, after);
  }

  private static String name(String ref) {
    return "X" + ref;
  }

  private static Pin named(Pin pin) {
    return new Pin(name(pin.ref()), pin.name());
  }

  private static Exercise renamed(Exercise e) {
    return new Exercise(
        e.slug(),
        e.title(),
        e.aim(),
        e.board(),
        e.meter(),
        e.parts().stream().map(p -> new Part(name(p.ref()), p.kind(), p.fields())).toList(),
        e.nets().stream()
            .map(n -> new Net(n.name(), n.pins().stream().map(MetamorphicTest::named).toList()))
            .toList(),
        e.conditions().stream()
            .map(
                c ->
                    new org.holewise.engine.exercise.Condition(
                        c.name(),
                        c.set().stream()
                            .map(
                                s ->
                                    new org.holewise.engine.exercise.Condition.Setting(
                                        name(s.ref()), s.field(), s.value()))
                            .toList(),
                        c.temperature()))
            .toList(),
        e.readings().stream().map(MetamorphicTest::renamed).toList(),
        e.allow(),
        e.marks());
  }

  private static org.holewise.engine.exercise.Reading renamed(
      org.holewise.engine.exercise.Reading r) {
    return new org.holewise.engine.exercise.Reading(
        r.id(), r.label(), renamed(r.measure()), r.occasion(), r.weight(), r.band());
  }

  private static org.holewise.engine.exercise.Measure renamed(
      org.holewise.engine.exercise.Measure measure) {
    if (measure instanceof org.holewise.engine.exercise.Measure.Volts v) {
      return new org.holewise.engine.exercise.Measure.Volts(renamed(v.red()), renamed(v.black()));
    }
    if (measure instanceof org.holewise.engine.exercise.Measure.Amps a) {
      return new org.holewise.engine.exercise.Measure.Amps(named(a.pin()));
    }
    return new org.holewise.engine.exercise.Measure.Seen(
        name(((org.holewise.engine.exercise.Measure.Seen) measure).ref()));
  }

  private static org.holewise.engine.exercise.Probe renamed(
      org.holewise.engine.exercise.Probe probe) {
    return org.holewise.engine.exercise.Probe.at(
        named(((org.holewise.engine.exercise.Probe.AtPin) probe).pin()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aLinkInTwoPiecesIsAsGoodAsOne(Case sample) {
    same(
        mark(sample.exercise(), sample.record()),
        mark(
            sample.exercise(),
            Transformed.inTwoPieces(
                sample.record(), 0, BenchDraft.hole("b28"), BenchDraft.hole("d28"))));
  }

  @Test
  void equalResistorsMayTradePlaces() {
    BenchRecord ladder = Samples.read(LADDER, Samples.ladderBuild(LADDER));
    Mark before = mark(LADDER, ladder);
    same(before, mark(LADDER, exchanged(ladder, "R2", "R4")));
    same(before, mark(LADDER, exchanged(ladder, "R1", "R3")));
    assertThat(mark(LADDER, exchanged(ladder, "R1", "R2")).wiring().matches()).isFalse();
  }

  private static BenchRecord exchanged(BenchRecord record, String one, String other) {
    return Samples.readAsBuilt(LADDER, Transformed.exchanged(record, one, other));
  }

  @Test
  void twiceTheVoltsReadTwiceInALinearCircuit() {
    Exercise twice = Samples.ladder(18);
    Mark nine = mark(LADDER, Samples.read(LADDER, Samples.ladderBuild(LADDER)));
    Mark eighteen = mark(twice, Samples.read(twice, Samples.ladderBuild(twice)));
    for (int i = 0; i < nine.readings().size(); i++) {
      assertThat(expected(eighteen, i)).isCloseTo(2 * expected(nine, i), within(SAME));
    }
  }

  private static double expected(Mark mark, int reading) {
    return mark.readings().get(reading).wanted().orElseThrow().shown()
            instanceof Shown.Amount amount
        ? amount.value()
        : Double.NaN;
  }

  @Test
  void aFaultRepairedGivesTheFirstMarkAgain() {
    BenchRecord sound = Samples.read(LAMP, Samples.lampBuild(LAMP));
    BenchRecord faulty = Transformed.withLead(sound, "D1", "k", BenchDraft.hole("e17"));
    Mark first = mark(LAMP, sound);
    assertThat(mark(LAMP, faulty)).isNotEqualTo(first);
    assertThat(mark(LAMP, Transformed.withLead(faulty, "D1", "k", BenchDraft.hole("e16"))))
        .isEqualTo(first);
  }

  @Test
  void theLampCasesDifferFromOneAnother() {
    assertThat(cases().map(c -> mark(c.exercise(), c.record()).marks().wiring()).distinct())
        .hasSizeGreaterThan(1);
    assertThat(mark(LAMP, cases().findFirst().orElseThrow().record()).diagnosis().suspects().get(0))
        .extracting(Suspect::place)
        .isEqualTo(new Place.Nowhere());
  }
}
