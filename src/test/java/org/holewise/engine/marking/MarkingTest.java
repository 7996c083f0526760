package org.holewise.engine.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.holewise.engine.board.Finding;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.exercise.BenchDraft;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Extra;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.part.Pin;
import org.holewise.engine.reading.Judged;
import org.holewise.engine.reading.Verdict;
import org.holewise.engine.wiring.Repair;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The whole road on a few builds. */
@Tag("fast")
class MarkingTest {
  private static final Exercise LAMP = Samples.lamp();

  private static Mark mark(BenchRecord record) {
    return Marking.mark(LAMP, record, Priors.start(), Set.of());
  }

  private static BenchRecord sound() {
    return Samples.read(LAMP, Samples.lampBuild(LAMP));
  }

  @Test
  void aSoundBuildHasAllItsMarksAndNothingToAccuse() {
    Mark mark = mark(sound());
    assertThat(mark.wiring().matches()).isTrue();
    assertThat(mark.wiring().differences()).isEmpty();
    assertThat(mark.readings()).extracting(Judged::verdict).containsOnly(Verdict.WITHIN);
    assertThat(mark.marks()).isEqualTo(new Points(60, 40, 100, false));
    assertThat(mark.diagnosis().suspects().get(0).place()).isEqualTo(new Place.Nowhere());
    assertThat(mark.findings()).isEmpty();
    assertThat(mark.cautions()).isEmpty();
    assertThat(mark.diagnosis().acts()).isEmpty();
  }

  @Test
  void oneLeadAColumnOffCostsItsShareAndIsNamed() {
    BenchDraft draft =
        new BenchDraft(LAMP)
            .place("B1", "+a3 -a3")
            .place("S1", "c6 c9")
            .place("R1", "d9 d13")
            .place("D1", "e14 e16")
            .link("a6", "+a6")
            .link("a16", "-a15")
            .read("supply", "5.00 V")
            .read("lamp", "0.00 V")
            .read("glow", "dark");
    Mark mark = mark(draft.record());
    assertThat(mark.wiring().score()).isEqualTo(1 - 1 / 8.0);
    assertThat(mark.marks().wiring()).isEqualTo(53);
    var first = mark.wiring().differences().get(0);
    assertThat(first.repair())
        .isInstanceOfSatisfying(
            Repair.MoveLead.class,
            lead -> {
              assertThat(lead.pin()).isEqualTo(new Pin("R1", "2"));
              assertThat(lead.to()).contains(BenchDraft.hole("d14"));
              assertThat(lead.slip()).isEqualTo(Repair.Slip.COLUMN_OFF);
            });
    assertThat(mark.readings()).extracting(Judged::verdict).contains(Verdict.MISSING);
    assertThat(mark.readings().get(1).verdict()).isEqualTo(Verdict.WITHIN);
    assertThat(mark.diagnosis().suspects().get(0).place()).isEqualTo(new Place.Nowhere());
  }

  @Test
  void aSoundLayoutThatReadsNothingPointsToAContact() {
    BenchDraft draft =
        Samples.lampBuild(LAMP)
            .read("supply", "5.00 V")
            .read("lamp", "0.00 V")
            .read("loop", "0.00 mA")
            .read("glow", "dark")
            .read("off", "0.00 V");
    Mark mark = mark(draft.record());
    assertThat(mark.wiring().matches()).isTrue();
    var first = mark.diagnosis().suspects().get(0);
    assertThat(first.place()).isNotEqualTo(new Place.Nowhere());
    assertThat(mark.diagnosis().suspects())
        .filteredOn(s -> s.place() instanceof Place.Nowhere)
        .allSatisfy(s -> assertThat(s.probability()).isLessThan(0.01));
    assertThat(mark.diagnosis().next()).isPresent();
    assertThat(mark.diagnosis().next().orElseThrow().gain()).isGreaterThan(0.3);
    assertThat(mark.diagnosis().acts()).isNotEmpty();
    assertThat(first.alike()).isNotEmpty();
  }

  @Test
  void readingsOfTheSchematicAgainstAWrongEntryHoldTheWiringMarks() {
    BenchDraft draft =
        new BenchDraft(LAMP)
            .place("B1", "+a3 -a3")
            .place("S1", "c6 c9")
            .place("R1", "d9 d14")
            .place("D1", "e14 e17")
            .link("a6", "+a6")
            .link("a16", "-a15");
    Mark mark = mark(Samples.read(LAMP, draft));
    assertThat(mark.wiring().matches()).isFalse();
    assertThat(mark.findings()).extracting(Finding::kind).contains("layout-doubtful");
    assertThat(mark.marks().held()).isTrue();
    assertThat(mark.marks().total()).isEqualTo(100);
    assertThat(mark.diagnosis().suspects().stream().limit(3).map(Suspect::place))
        .contains(new Place.OfLead(new Pin("D1", "k")));
  }

  @Test
  void withoutALayoutTheSchematicIsTakenAndTheWiringEarnsNothing() {
    BenchDraft draft = new BenchDraft(LAMP).read("supply", "5.00 V").read("lamp", "0.00 V");
    Mark mark = mark(draft.record());
    assertThat(mark.findings()).extracting(Finding::kind).contains("layout-missing");
    assertThat(mark.marks().wiring()).isZero();
    assertThat(mark.diagnosis().suspects().get(0).place()).isNotEqualTo(new Place.Nowhere());
  }

  @Test
  void withoutReadingsNothingIsKnownButThePriors() {
    Mark mark = mark(Samples.lampBuild(LAMP).record());
    assertThat(mark.marks()).isEqualTo(new Points(60, 0, 100, false));
    assertThat(mark.diagnosis().suspects().get(0).place()).isEqualTo(new Place.Nowhere());
    assertThat(mark.diagnosis().suspects().get(0).probability())
        .isCloseTo(Priors.start().sound(), within(1e-9));
  }

  @Test
  void aShortedSupplyIsACautionAndEveryReadingIsStillJudged() {
    BenchDraft draft = Samples.lampBuild(LAMP).link("+a20", "-a20").read("supply", "0.01 V");
    Mark mark = mark(draft.record());
    assertThat(mark.cautions()).extracting(Caution::kind).contains("supply-shorted");
    assertThat(mark.readings()).hasSize(LAMP.readings().size());
  }

  @Test
  void aBuzzerBetweenPointsThatNothingJoinsIsAReadingLikeAnother() {
    for (String heard : List.of("no", "yes")) {
      BenchRecord sound = sound();
      var free = new Measure.Joined(Probe.at(new Pin("R1", "1")), Probe.at(BenchDraft.hole("h40")));
      BenchRecord asked =
          new BenchRecord(
              sound.exercise(),
              sound.meter(),
              sound.build(),
              sound.readings(),
              List.of(new Extra("x1", free, "lit", Written.text(heard))));
      Mark mark = mark(asked);
      assertThat(mark.diagnosis().suspects()).isNotEmpty();
      assertThat(mark.diagnosis().suspects())
          .allSatisfy(s -> assertThat(s.probability()).isBetween(0.0, 1.0));
      assertThat(mark.diagnosis().suspects().get(0).place()).isEqualTo(new Place.Nowhere());
    }
  }

  @Test
  void aPartMarkedOtherwiseIsThePartThatIsJudged() {
    for (String marked : List.of("680R", "680 Ω", "680RJ", "blue grey brown gold")) {
      BenchRecord record = Samples.read(LAMP, Samples.lampBuild(LAMP));
      Mark mark = mark(Transformed.marked(record, "R1", marked));
      assertThat(mark.findings()).extracting(Finding::kind).contains("marked-otherwise");
      assertThat(mark.readings().get(3).verdict()).as(marked).isEqualTo(Verdict.OUTSIDE);
    }
    for (String marked : List.of("330R", "0.33k", "orange orange brown gold")) {
      BenchRecord record = Samples.read(LAMP, Samples.lampBuild(LAMP));
      assertThat(mark(Transformed.marked(record, "R1", marked)).marks().total()).isEqualTo(100);
    }
    BenchRecord record = Samples.read(LAMP, Samples.lampBuild(LAMP));
    assertThat(mark(Transformed.marked(record, "R1", "pink")).findings())
        .extracting(Finding::kind)
        .containsExactly("marked-unreadable");
  }

  @Test
  void theSameArgumentsGiveTheSameMark() {
    assertThat(mark(sound())).isEqualTo(mark(sound()));
  }
}
