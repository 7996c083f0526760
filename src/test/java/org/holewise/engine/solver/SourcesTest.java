package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Registry;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sources: limits, loops, and currents that nothing takes. */
@Tag("fast")
class SourcesTest {
  private static final double EXACT = 1e-12;

  private static Unsolvable refused(Circuit circuit) {
    Outcome outcome = OperatingPointSolver.solve(circuit);
    assertThat(outcome).isInstanceOf(Unsolvable.class);
    return (Unsolvable) outcome;
  }

  @Nested
  class Limits {
    private static OperatingPoint loaded(double ohms) {
      return Rows.solved(
          "V1 supply a 0 volts=5 limit=50m; R1 resistor a 0 ohms=%s".formatted(ohms));
    }

    private static double volts(OperatingPoint point) {
      return point.volts(Rows.pin("V1.+"), Rows.pin("V1.-"));
    }

    private static double delivered(OperatingPoint point) {
      return -point.current(Rows.lead("V1.+"));
    }

    @Test
    void theVoltageHoldsBelowTheLimitAndGivesWayAtIt() {
      assertThat(volts(loaded(200))).isCloseTo(5, within(EXACT));
      assertThat(delivered(loaded(200))).isCloseTo(25e-3, within(EXACT));
      assertThat(volts(loaded(50))).isCloseTo(2.5, within(EXACT));
      assertThat(delivered(loaded(50))).isEqualTo(50e-3);
    }

    /** 5 V and 50 mA meet at 100 Ω: on either side of it the nearer law, no rounding between. */
    @Test
    void theCornerIsSharp() {
      assertThat(volts(loaded(100 * (1 + 1e-9)))).isCloseTo(5, within(EXACT));
      assertThat(delivered(loaded(100 * (1 - 1e-9)))).isEqualTo(50e-3);
      assertThat(volts(loaded(100))).isCloseTo(5, within(1e-10));
      assertThat(delivered(loaded(100))).isCloseTo(50e-3, within(EXACT));
    }

    @Test
    void shortedItDeliversItsLimitAtNoVoltage() {
      OperatingPoint point =
          Rows.solved("V1 supply a 0 volts=5 limit=50m; S1 switch a 0 closed=true");
      assertThat(volts(point)).isZero();
      assertThat(delivered(point)).isEqualTo(50e-3);
      assertThat(point.current(Rows.lead("S1.1"))).isCloseTo(50e-3, within(EXACT));
    }

    @Test
    void aLampWithoutResistorSeesTheLimit() {
      OperatingPoint point = Rows.solved("V1 supply a 0 volts=5 limit=15m; D1 led a 0");
      assertThat(point.current(Rows.lead("D1.a"))).isCloseTo(15e-3, within(EXACT));
      assertThat(volts(point)).isBetween(1.9, 2.0);
    }

    @Test
    void aPairGivesWayOutputByOutput() {
      Fields plus =
          Fields.NONE.with("plus", "+").with("minus", "com").with("volts", 15.0).with("limit", 0.1);
      Fields minus =
          Fields.NONE.with("plus", "com").with("minus", "-").with("volts", 15.0).with("limit", 0.2);
      var supply =
          new Part(
              "V1",
              Registry.kind("supply").orElseThrow(),
              Fields.NONE.with("outputs", List.of(plus, minus)));
      Rows rows = Rows.of("R1 resistor p c ohms=50; R2 resistor c m ohms=300");
      rows.add(supply, List.of("p", "c", "m"));
      OperatingPoint point = Rows.solved(rows.circuit());
      assertThat(point.volts(rows.at("p"), rows.at("c"))).isCloseTo(5, within(EXACT));
      assertThat(point.volts(rows.at("c"), rows.at("m"))).isCloseTo(15, within(EXACT));
    }

    /** Plus to minus of a pair: both collapse, the weaker one's limit flows. */
    @Test
    void aPairShortedEndToEndHasAnAnswer() {
      OperatingPoint point =
          Rows.solved(
              "V1 supply p c volts=15 limit=100m; V2 supply c m volts=15 limit=200m;"
                  + "S1 switch p m closed=true; R1 resistor p c ohms=1k");
      assertThat(Math.abs(point.current(Rows.lead("S1.1")))).isLessThanOrEqualTo(0.2 + EXACT);
      assertThat(point.volts(Rows.pin("S1.1"), Rows.pin("S1.2"))).isZero();
    }

    @Test
    void aStrongerNeighbourTakesOverAtItsVoltage() {
      OperatingPoint point =
          Rows.solved(
              "V1 supply a 0 volts=9 limit=100m; V2 supply a 0 volts=5 limit=1;"
                  + "R1 resistor a 0 ohms=20");
      assertThat(volts(point)).isCloseTo(5, within(EXACT));
      assertThat(delivered(point)).isEqualTo(0.1);
      assertThat(point.current(Rows.lead("V2.+"))).isCloseTo(-0.15, within(EXACT));
    }

    /** A supply whose leads are exchanged is one of minus its volts: its limit still holds. */
    @Test
    void aReversedSupplyKeepsItsLimit() {
      OperatingPoint point =
          Rows.solved("V1 supply a 0 volts=-5 limit=50m; R1 resistor a 0 ohms=10");
      assertThat(volts(point)).isCloseTo(-0.5, within(EXACT));
      assertThat(delivered(point)).isEqualTo(-50e-3);
    }
  }

  @Nested
  class Loops {
    @ParameterizedTest
    @ValueSource(
        strings = {
          "B1 battery a 0 volts=9; B2 battery a 0 volts=9",
          "B1 battery a 0 volts=9; B2 battery a 0 volts=5; R1 resistor a 0 ohms=1k",
          "B1 battery a a volts=9",
          "B1 battery a 0 volts=9; S1 switch a 0 closed=true",
          "B1 battery a 0 volts=9; B2 battery b 0 volts=3; S1 button a x b y closed=true",
          "B1 battery a 0 volts=9; B2 battery b a volts=3; B3 battery b 0 volts=12",
          "B1 battery a 0 volts=9; V1 supply a 0 volts=5 limit=100m",
          "B1 battery a 0 volts=5; V1 supply a 0 volts=5 limit=100m"
        })
    void ofIdealSourcesAreRefused(String rows) {
      Unsolvable refused = refused(Rows.circuit(rows));
      assertThat(refused.why()).isEqualTo(Unsolvable.Why.SOURCE_LOOP);
      assertThat(refused.nets()).isNotEmpty().isSorted();
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "B1 battery a 0 volts=9 internal=1; B2 battery a 0 volts=9",
          "B1 battery a 0 volts=9; B2 battery b a volts=9; R1 resistor b 0 ohms=1k",
          "B1 battery a 0 volts=9; V1 supply a 0 volts=12 limit=100m",
          "V1 supply a 0 volts=5 limit=100m; V2 supply a 0 volts=5 limit=100m"
        })
    void thatCanGiveWayAreNot(String rows) {
      assertThat(OperatingPointSolver.solve(Rows.circuit(rows))).isInstanceOf(OperatingPoint.class);
    }

    @Test
    void nameTheNetsOfTheLoopOnly() {
      Rows rows =
          Rows.of(
              "R1 resistor x y ohms=1k; B1 battery a 0 volts=9; B2 battery a 0 volts=9;"
                  + "R2 resistor a x ohms=1k");
      int a = ((Point.AtNet) rows.at("a")).net();
      int ground = ((Point.AtNet) rows.at("0")).net();
      assertThat(refused(rows.circuit()).nets()).containsExactlyInAnyOrder(a, ground);
    }
  }

  @Nested
  class Feeds {
    /** What the 1 GΩ of an island's nets take of a milliampere moves a diode by less (V). */
    private static final double ISLAND = 1e-7;

    private final Rows rows =
        Rows.of("R1 resistor a b ohms=1k; D1 diode c d; R2 resistor d e ohms=1k");

    private Circuit fed(String into, String from, double amps) {
      return rows.circuit().with(List.of(new Edit.Feed(rows.at(into), rows.at(from), amps)));
    }

    @Test
    void throughAResistorGiveItsVoltage() {
      OperatingPoint point = Rows.solved(fed("a", "b", 1e-3));
      assertThat(point.volts(rows.at("a"), rows.at("b"))).isCloseTo(1, within(EXACT));
    }

    /** The small silicon diode of the project's law: 0.62 V at 1 mA. */
    @Test
    void throughADiodeGiveItsForwardVoltage() {
      OperatingPoint point = Rows.solved(fed("c", "d", 1e-3));
      assertThat(point.volts(rows.at("c"), rows.at("d"))).isCloseTo(0.62, within(ISLAND));
    }

    @Test
    void fromOneIslandToAnotherAreRefused() {
      assertThat(refused(fed("a", "d", 1e-3)).why()).isEqualTo(Unsolvable.Why.CUT_SET);
    }

    @Test
    void againstADiodeAreRefused() {
      assertThat(refused(fed("e", "c", 1e-3)).why()).isEqualTo(Unsolvable.Why.CUT_SET);
      assertThat(refused(fed("c", "e", -1e-3)).why()).isEqualTo(Unsolvable.Why.CUT_SET);
    }

    @Test
    void intoAnEmitterAgainstTheBaseAreRefused() {
      Rows npn = Rows.of("Q1 npn c b e; R1 resistor b x ohms=1k");
      Edit against = new Edit.Feed(npn.at("e"), npn.at("x"), 1e-4);
      assertThat(refused(npn.circuit().with(List.of(against))).why())
          .isEqualTo(Unsolvable.Why.CUT_SET);
      Edit along = new Edit.Feed(npn.at("x"), npn.at("e"), 1e-4);
      OperatingPoint point = Rows.solved(npn.circuit().with(List.of(along)));
      assertThat(point.volts(npn.at("b"), npn.at("e"))).isBetween(0.5, 0.8);
    }

    /** No base current, no collector current: found by the search, not by the graph. */
    @Test
    void throughATransistorWithoutBaseAreRefused() {
      Rows npn = Rows.of("Q1 npn c b e");
      Edit through = new Edit.Feed(npn.at("c"), npn.at("e"), 1e-3);
      assertThat(refused(npn.circuit().with(List.of(through))).why())
          .isEqualTo(Unsolvable.Why.CUT_SET);
    }

    @Test
    void anInstrumentThatGivesWayHasAnAnswerEverywhere() {
      Edit forward = new Edit.Source(rows.at("c"), rows.at("d"), 3, 1e-3);
      OperatingPoint lit = Rows.solved(rows.circuit().with(List.of(forward)));
      assertThat(lit.volts(rows.at("c"), rows.at("d"))).isCloseTo(0.62, within(ISLAND));
      assertThat(lit.outside()[0]).isEqualTo(1e-3);
      Edit backward = new Edit.Source(rows.at("d"), rows.at("c"), 3, 1e-3);
      OperatingPoint dark = Rows.solved(rows.circuit().with(List.of(backward)));
      assertThat(dark.volts(rows.at("d"), rows.at("c"))).isCloseTo(3, within(EXACT));
      assertThat(dark.outside()[0]).isBetween(0.0, 1e-8);
      Edit across = new Edit.Source(rows.at("a"), rows.at("e"), 3, 1e-3);
      OperatingPoint open = Rows.solved(rows.circuit().with(List.of(across)));
      assertThat(open.volts(rows.at("a"), rows.at("e"))).isCloseTo(3, within(1e-9));
    }
  }
}
