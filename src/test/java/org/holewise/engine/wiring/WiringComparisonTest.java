package org.holewise.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.holewise.engine.board.Benches;
import org.holewise.engine.exercise.Allow;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.PlainKind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class WiringComparisonTest {
  private static final Allow STRICT = new Allow(false, false, false);

  @Nested
  class APorchLamp {
    private static final String B1 = "B1 +=+j2 -=-a2";
    private static final String S1 = "S1 1=+j6 2=j8";
    private static final String R1 = "R1 1=f8 2=f12";
    private static final String D1 = "D1 a=g12 k=g14";
    private static final String BACK = "link f14 e14";
    private static final String DOWN = "link a14 -a14";

    @Test
    void thatIsBuiltRightMatches() {
      var report = lamp(B1, S1, R1, D1, BACK, DOWN);
      assertThat(report.matches()).isTrue();
      assertThat(report.score()).isEqualTo(1);
      assertThat(report.differences()).isEmpty();
    }

    @Test
    void mayHaveItsSeriesInAnotherOrderAndItsResistorTurned() {
      assertThat(lamp(B1, "D1 a=+j6 k=j8", "S1 1=f8 2=f12", "R1 1=g14 2=g12", BACK, DOWN))
          .matches(WiringReport::matches);
    }

    @Test
    void mayNotHaveItsSeriesInAnotherOrderWhereOrderCounts() {
      var report = lamp(STRICT, B1, "S1 1=f8 2=f12", "R1 1=+j6 2=j8", D1, BACK, DOWN);
      assertThat(report.matches()).isFalse();
    }

    @Test
    void mayHaveALinkTooManyUnlessThatIsForbidden() {
      String again = "link h14 d14";
      assertThat(lamp(B1, S1, R1, D1, BACK, DOWN, again).matches()).isTrue();
      var report = lamp(STRICT, B1, S1, R1, D1, BACK, DOWN, again);
      assertThat(all(report)).contains("remove 0", "remove 2");
      assertThat(report.differences()).hasSize(1);
    }

    @Test
    void withALeadAColumnOffSaysSo() {
      var report = lamp(B1, S1, R1, "D1 a=g13 k=g14", BACK, DOWN);
      assertThat(report.score()).isCloseTo(1 - 1 / 8.0, within(1e-12));
      assertThat(report.differences()).hasSize(1);
      assertThat(all(report))
          .containsExactly(
              "R1.2 COLUMN_OFF lamp/ [f13, h13, i13, j13]",
              "D1.a COLUMN_OFF lamp/ [g12, h12, i12, j12]",
              "add [h12, g12, i12, j12] [h13, i13, f13, j13]");
    }

    @Test
    void withALeadInAnotherNetNamesBoth() {
      var report = lamp(B1, S1, R1, "D1 a=g12 k=h8", BACK, DOWN);
      assertThat(all(report))
          .anyMatch(r -> r.startsWith("D1.k ELSEWHERE return/fed [h14, g14, i14, j14, d14"));
    }

    @Test
    void withALeadAcrossTheGrooveSaysSo() {
      var report = lamp(B1, S1, R1, "D1 a=e12 k=g14", BACK, DOWN);
      assertThat(all(report).get(0)).startsWith("R1.2 ACROSS_GROOVE lamp/ [d12");
      assertThat(all(report)).contains("D1.a ACROSS_GROOVE lamp/ [g12, h12, i12, j12]");
    }

    @Test
    void withBothLeadsOfAPartInOneStripSaysSo() {
      var report = lamp(B1, S1, "R1 1=f8 2=h8", D1, BACK, DOWN);
      assertThat(all(report)).contains("R1.2 SAME_STRIP lamp/fed [h12, i12, f12, j12]");
    }

    @Test
    void onTheOtherRailOfThePairSaysSo() {
      var report = lamp("B1 +=-j2 -=-a2", S1, R1, D1, BACK, DOWN);
      assertThat(all(report).get(0)).startsWith("B1.+ OTHER_RAIL supply/ [+j3");
      assertThat(all(report)).anyMatch(r -> r.startsWith("S1.1 OTHER_RAIL supply/ [-j6"));
    }

    @Test
    void acrossARailsGapOffersABridge() {
      var report = lamp("B1 +=+j2 -=-a61", S1, R1, D1, BACK, DOWN);
      assertThat(all(report).get(0)).startsWith("B1.- PAST_GAP return/ [-a31");
      assertThat(all(report)).anyMatch(r -> r.startsWith("bridge [-a31"));
    }

    @Test
    void withoutALinkOffersOne() {
      var report = lamp(B1, S1, R1, D1, BACK);
      assertThat(report.differences()).hasSize(1);
      assertThat(all(report)).anyMatch(r -> r.startsWith("add [a14"));
      assertThat(all(report)).anyMatch(r -> r.startsWith("B1.- "));
    }

    @Test
    void withALinkThatShortsTwoNetsHasItRemovedOrMoved() {
      var report = lamp(B1, S1, R1, D1, BACK, DOWN, "link i8 i14");
      assertThat(report.differences()).hasSize(1);
      assertThat(all(report).get(0)).isEqualTo("remove 2");
      assertThat(all(report)).anyMatch(r -> r.startsWith("link 2 1 ELSEWHERE fed/return [h8, g8"));
    }

    @Test
    void withItsLampTheWrongWayRoundNeedsBothLeadsMoved() {
      var report = lamp(STRICT, B1, S1, R1, "D1 k=g12 a=g14", BACK, DOWN);
      assertThat(report.differences())
          .extracting(difference -> text(difference.repair()).substring(0, 4))
          .containsExactly("D1.a", "D1.k");
    }

    @Test
    void offTheBoardSaysWhereTo() {
      var report = lamp(B1, S1, R1, "D1 a=g12 k=g64", BACK, DOWN);
      assertThat(all(report))
          .singleElement()
          .matches(r -> r.startsWith("D1.k ELSEWHERE return/ [-a31"));
    }

    @Test
    void withALeadInNoHoleSaysWhereTo() {
      var report = lamp(B1, S1, R1, "D1 a=g12", BACK, DOWN);
      var lead = (Repair.MoveLead) report.differences().get(0).repair();
      assertThat(lead.from()).isEmpty();
      assertThat(lead.to()).isNotEmpty();
    }

    @Test
    void withoutAPartHasItPlaced() {
      assertThat(all(lamp(B1, S1, R1, BACK, DOWN))).containsExactly("place D1");
    }

    @Test
    void thatIsNotBuiltAtAllHasEveryPartPlaced() {
      var report = lamp();
      assertThat(report.differences()).hasSize(4);
      assertThat(report.score()).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void ignoresStrangersAndSecondPlacings() {
      assertThat(lamp(B1, S1, R1, D1, BACK, DOWN, "R9 1=f8 2=f14", "R1 1=a40 2=a44"))
          .matches(WiringReport::matches);
    }

    private WiringReport lamp(String... lines) {
      return lamp(Allow.ALL, lines);
    }

    private WiringReport lamp(Allow allow, String... lines) {
      List<Part> parts =
          List.of(
              PlainKind.BATTERY.part("B1"),
              PlainKind.SWITCH.part("S1"),
              PlainKind.RESISTOR.part("R1"),
              PlainKind.LED.part("D1"));
      Exercise exercise =
          Labs.exercise(
              "830-split",
              parts,
              allow,
              "supply B1.+ S1.1",
              "fed S1.2 R1.1",
              "lamp R1.2 D1.a",
              "return D1.k B1.-");
      return WiringComparison.compare(exercise, Benches.build("830-split", lines));
    }
  }

  @Nested
  class ADivider {
    @Test
    void mayHaveEqualResistorsSwapped() {
      assertThat(divider(47, Allow.ALL).matches()).isTrue();
    }

    @Test
    void mayNotHaveUnequalResistorsSwapped() {
      assertThat(divider(10, new Allow(false, true, true)).differences()).hasSize(2);
    }

    @Test
    void mayNotHaveEqualResistorsSwappedWhereThatCounts() {
      assertThat(divider(47, new Allow(true, false, true)).matches()).isFalse();
    }

    /** R2 above, R1 below; a tap between them. */
    private WiringReport divider(double lower, Allow allow) {
      var parts =
          List.of(
              PlainKind.BATTERY.part("B1"),
              PlainKind.RESISTOR.part("R1", 47),
              PlainKind.RESISTOR.part("R2", lower),
              PlainKind.LED.part("D1"));
      Exercise exercise =
          Labs.exercise(
              "400", parts, allow, "in B1.+ R1.1", "tap R1.2 R2.1 D1.a", "back R2.2 B1.- D1.k");
      return WiringComparison.compare(
          exercise,
          Benches.build("400", "B1 +=a1 -=a9", "R2 1=b1 2=b5", "R1 1=c5 2=c9", "D1 a=d5 k=d9"));
    }
  }

  @Nested
  class AButton {
    @Test
    void mayBeUsedByEitherTwin() {
      assertThat(button("S1 1=e5 1a=f5 2=e7 2a=f7", "R1 1=j5 2=a1").matches()).isTrue();
    }

    @Test
    void turnedByAQuarterJoinsWhatItShouldSwitch() {
      var report = button("S1 1=e5 1a=e7 2=f5 2a=f7", "R1 1=a5 2=a1");
      assertThat(report.matches()).isFalse();
    }

    private WiringReport button(String... lines) {
      var parts =
          List.of(
              PlainKind.BATTERY.part("B1"),
              PlainKind.BUTTON.part("S1"),
              PlainKind.RESISTOR.part("R1"));
      Exercise exercise =
          Labs.exercise("830", parts, Allow.ALL, "in B1.+ R1.2", "on R1.1 S1.1", "off S1.2 B1.-");
      var all = new ArrayList<>(List.of("B1 +=b1 -=a7"));
      all.addAll(List.of(lines));
      return WiringComparison.compare(exercise, Benches.build("830", all.toArray(String[]::new)));
    }
  }

  @Test
  void aPinOfNoNetMustTouchNothing() {
    var parts = List.of(PlainKind.BATTERY.part("B1"), PlainKind.POTENTIOMETER.part("P1"));
    Exercise exercise = Labs.exercise("170", parts, Allow.ALL, "in B1.+ P1.1", "out P1.w B1.-");
    var right = Benches.build("170", "B1 +=a1 -=a2", "P1 1=b1 w=b2 2=b3");
    assertThat(WiringComparison.compare(exercise, right).matches()).isTrue();
    var touching = Benches.build("170", "B1 +=a1 -=a2", "P1 1=b1 w=b2 2=c2");
    var report = WiringComparison.compare(exercise, touching);
    var lead = (Repair.MoveLead) report.differences().get(0).repair();
    assertThat(lead.pin()).hasToString("P1.2");
    assertThat(lead.net()).isEmpty();
    assertThat(lead.joins()).isEqualTo("out");
    assertThat(lead.to()).contains(Benches.hole("b3")).doesNotContain(Benches.hole("d1"));
  }

  private static List<String> all(WiringReport report) {
    return report.differences().stream()
        .flatMap(
            difference -> Stream.concat(Stream.of(difference.repair()), difference.or().stream()))
        .map(WiringComparisonTest::text)
        .toList();
  }

  private static String text(Repair repair) {
    if (repair instanceof Repair.MoveLead lead) {
      return lead.pin()
          + " "
          + lead.slip()
          + " "
          + lead.net()
          + "/"
          + lead.joins()
          + " "
          + lead.to();
    }
    if (repair instanceof Repair.MoveLinkEnd end) {
      return "link "
          + end.link()
          + " "
          + end.end()
          + " "
          + end.slip()
          + " "
          + end.net()
          + "/"
          + end.joins()
          + " "
          + end.to();
    }
    if (repair instanceof Repair.AddLink add) {
      return (add.acrossGap() ? "bridge " : "add ") + add.from() + " " + add.to();
    }
    return repair instanceof Repair.RemoveLink gone
        ? "remove " + gone.link()
        : "place " + ((Repair.PlacePart) repair).ref();
  }
}
