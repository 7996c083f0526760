package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.holewise.engine.part.Part;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is one node, what is the reference, and what hangs on nothing. */
@Tag("fast")
class NodesTest {
  private static final double EXACT = 1e-12;

  private static OperatingPoint with(Rows rows, Edit... edits) {
    return Rows.solved(rows.circuit().with(List.of(edits)));
  }

  @Nested
  class TheReference {
    @Test
    void isMinusOfTheFirstSource() {
      Rows rows =
          Rows.of("R1 resistor a b ohms=1k; B1 battery a b volts=9; B2 battery c b volts=5");
      assertThat(Rows.solved(rows.circuit()).volts(rows.at("b"))).isZero();
      assertThat(Rows.solved(rows.circuit()).volts(rows.at("a"))).isCloseTo(9, within(EXACT));
    }

    @Test
    void isTheBareMetalAndNotTheStripBehindABadContact() {
      Rows rows = Rows.of("B1 battery a b volts=9; R1 resistor a b ohms=1k");
      OperatingPoint point = with(rows, new Edit.Contact(Rows.lead("B1.-"), 500));
      assertThat(point.volts(Rows.pin("B1.-"))).isZero();
      assertThat(point.volts(rows.at("b"))).isCloseTo(3, within(EXACT));
    }

    @Test
    void isTheFirstNetWithoutASource() {
      Rows rows = Rows.of("R1 resistor a b ohms=1k");
      OperatingPoint point = with(rows, new Edit.Feed(rows.at("b"), rows.at("a"), 1e-3));
      assertThat(point.volts(rows.at("a"))).isZero();
      assertThat(point.volts(rows.at("b"))).isCloseTo(1, within(EXACT));
    }
  }

  @Nested
  class Islands {
    private final Rows rows =
        Rows.of(
            "B1 battery a 0 volts=9; R1 resistor a 0 ohms=1k; B2 battery p m volts=6;"
                + "S1 switch p a closed=false; R2 resistor p m ohms=1k");

    /** Two nets, 1 GΩ each: half of the voltage on either side of the reference. */
    @Test
    void hangOnAGigohmFromEachOfTheirNets() {
      OperatingPoint point = Rows.solved(rows.circuit());
      assertThat(point.floating(rows.at("p"))).isTrue();
      assertThat(point.floating(rows.at("a"))).isFalse();
      assertThat(point.volts(rows.at("p"))).isCloseTo(3, within(1e-9));
      assertThat(point.volts(rows.at("m"))).isCloseTo(-3, within(1e-9));
      assertThat(point.response(rows.at("p"), rows.at("0")).ohms()).isCloseTo(5e8, within(5.0));
    }

    @Test
    void areIslandsNoLongerWhereAnythingConducts() {
      Edit meter = new Edit.Across(rows.at("m"), rows.at("0"), 10e6);
      OperatingPoint point = with(rows, meter);
      assertThat(point.floating(rows.at("p"))).isFalse();
      assertThat(point.volts(rows.at("m"))).isCloseTo(0, within(1e-9));
      assertThat(point.volts(rows.at("p"))).isCloseTo(6, within(1e-9));
    }

    @Test
    void joinedNetsAreOneNodeWithOneGigohm() {
      Rows joined =
          Rows.of(
              "B1 battery a 0 volts=9; R1 resistor a 0 ohms=1k; B2 battery p m volts=6;"
                  + "S1 switch p q closed=true; R2 resistor p m ohms=1k; R3 resistor q r ohms=1k");
      OperatingPoint point = Rows.solved(joined.circuit());
      assertThat(point.volts(joined.at("q"), joined.at("p"))).isZero();
      assertThat(point.response(joined.at("p"), joined.at("0")).ohms())
          .isCloseTo(1e9 / 3, within(1e4));
    }

    @Test
    void anUnconnectedLeadIsAnIsland() {
      Rows open = Rows.of("B1 battery a 0 volts=9; S1 switch a b closed=false");
      OperatingPoint point = Rows.solved(open.circuit());
      assertThat(point.floating(open.at("b"))).isTrue();
      assertThat(point.volts(open.at("b"))).isZero();
      assertThat(point.response(open.at("b"), open.at("0")).ohms()).isCloseTo(1e9, within(1.0));
    }

    @Test
    void aReversedJunctionIsAPath() {
      Rows reversed = Rows.of("B1 battery a 0 volts=9; D1 diode b a; R1 resistor b c ohms=1k");
      OperatingPoint point = Rows.solved(reversed.circuit());
      assertThat(point.floating(reversed.at("c"))).isFalse();
      assertThat(point.volts(reversed.at("c"))).isCloseTo(9, within(1e-9));
    }

    /** A lamp that nothing can light has no voltage, whatever the search came by. */
    @Test
    void aDeadEndBehindALampTakesItsVoltage() {
      for (String colour : List.of("red", "blue")) {
        Rows rows =
            Rows.of(
                "B1 battery a 0 volts=9; D1 led a b colour="
                    + colour
                    + "; R1 resistor b c ohms=1k");
        OperatingPoint point = Rows.solved(rows.circuit());
        assertThat(point.volts(rows.at("c"))).isCloseTo(9, within(1e-9));
        assertThat(point.current(Rows.lead("D1.a"))).isCloseTo(0, within(1e-24));
      }
    }

    @Test
    void twoReversedLampsShareEvenly() {
      Rows rows = Rows.of("B1 battery a 0 volts=9; D1 led 0 b; D2 led b a");
      assertThat(Rows.solved(rows.circuit()).volts(rows.at("b"))).isCloseTo(4.5, within(1e-6));
    }
  }

  @Nested
  class Joins {
    @Test
    void parallelClosedSwitchesAreNoLoopAndShareTheCurrent() {
      Rows rows =
          Rows.of(
              "B1 battery a 0 volts=6; S1 switch a b closed=true; S2 switch a b closed=true;"
                  + "R1 resistor b 0 ohms=1k");
      OperatingPoint point = Rows.solved(rows.circuit());
      assertThat(point.current(Rows.lead("S1.1"))).isCloseTo(3e-3, within(EXACT));
      assertThat(point.current(Rows.lead("S2.2"))).isCloseTo(-3e-3, within(EXACT));
      assertThat(point.power("S1")).isZero();
    }

    @Test
    void aButtonJoinsItsTwinsAndCarriesBetweenThem() {
      Rows rows =
          Rows.of(
              "B1 battery a 0 volts=6; S1 button a b c d closed=false; R1 resistor b 0 ohms=1k;"
                  + "R2 resistor d 0 ohms=1k; R3 resistor c 0 ohms=1k");
      OperatingPoint open = Rows.solved(rows.circuit());
      assertThat(open.volts(rows.at("b"), rows.at("0"))).isCloseTo(6, within(EXACT));
      assertThat(open.volts(rows.at("d"), rows.at("0"))).isZero();
      assertThat(open.current(Rows.lead("S1.1a"))).isCloseTo(-6e-3, within(EXACT));
      Part pressed = rows.parts().get(1).with("closed", true);
      OperatingPoint closed = with(rows, new Edit.Instead(pressed));
      assertThat(closed.volts(rows.at("d"), rows.at("0"))).isCloseTo(6, within(EXACT));
      assertThat(closed.current(Rows.lead("S1.1"))).isCloseTo(18e-3, within(EXACT));
      assertThat(closed.current(Rows.lead("S1.2a"))).isCloseTo(-6e-3, within(EXACT));
    }

    /** A bad contact at one twin leaves the metal of both alone. */
    @Test
    void aBadContactOfATwinIsGotRoundByTheOther() {
      Rows rows =
          Rows.of(
              "B1 battery a 0 volts=6; S1 button a b c d closed=true; R1 resistor b 0 ohms=1k;"
                  + "R2 resistor a b ohms=100; R3 resistor c 0 ohms=1k");
      OperatingPoint point = with(rows, new Edit.Contact(Rows.lead("S1.1"), 1e9));
      double viaTwin = 6 * (500 / 600.0);
      assertThat(point.volts(Rows.pin("S1.1"))).isCloseTo(viaTwin, within(1e-6));
      assertThat(point.volts(rows.at("a"))).isCloseTo(6, within(EXACT));
    }

    @Test
    void aWiperAtAnEndIsThatEnd() {
      for (double set : new double[] {0, 1}) {
        Rows rows =
            Rows.of(
                "B1 battery a 0 volts=6; P1 potentiometer a w 0 ohms=10k set="
                    + set
                    + "; R1 resistor w 0 ohms=10k");
        OperatingPoint point = Rows.solved(rows.circuit());
        assertThat(point.volts(rows.at("w"))).isCloseTo(set == 0 ? 6 : 0, within(EXACT));
        double wiper = set == 0 ? -6e-4 : 0;
        assertThat(point.current(Rows.lead("P1.w"))).isCloseTo(wiper, within(EXACT));
        assertThat(point.power("P1")).isCloseTo(3.6e-3, within(EXACT));
      }
    }

    @Test
    void aWiperDividesInBetween() {
      Rows rows = Rows.of("B1 battery a 0 volts=6; P1 potentiometer a w 0 ohms=10k set=0.25");
      assertThat(Rows.solved(rows.circuit()).volts(rows.at("w"))).isCloseTo(4.5, within(EXACT));
    }
  }

  @Nested
  class Extremes {
    /** 1 GΩ in the way of 10 MΩ: 9 V · 10/1010. */
    @Test
    void anOpenContactStillShowsOnAMeter() {
      Rows rows =
          Rows.of("B1 battery a 0 volts=9; R1 resistor a b ohms=1k; R2 resistor 0 c ohms=1");
      OperatingPoint point =
          with(
              rows,
              new Edit.Contact(Rows.lead("R1.1"), 1e9),
              new Edit.Across(Rows.pin("R1.2"), rows.at("0"), 10e6));
      assertThat(point.volts(rows.at("b"))).isCloseTo(9 * 1e7 / (1e9 + 1e7 + 1e3), within(1e-12));
    }

    @Test
    void aGigohmAndAnAmmetersHundredthOfAnOhmLiveTogether() {
      Rows rows =
          Rows.of("B1 battery a 0 volts=9; R1 resistor a b ohms=1k; R2 resistor b 0 ohms=1k");
      OperatingPoint point =
          with(
              rows,
              new Edit.InSeries(Rows.lead("R1.2"), 0.01),
              new Edit.Contact(Rows.lead("R2.1"), 1e9));
      double exact = 9 / (1e9 + 2e3 + 0.01);
      assertThat(point.current(Rows.lead("R1.2"))).isCloseTo(-exact, within(1e-9 * exact));
    }

    /** A meter in series and a bad contact at the same lead add up. */
    @Test
    void aMeterInSeriesKeepsTheBadContact() {
      Rows rows = Rows.of("B1 battery a 0 volts=9; R1 resistor a 0 ohms=800");
      OperatingPoint point =
          with(
              rows,
              new Edit.InSeries(Rows.lead("R1.1"), 1),
              new Edit.Contact(Rows.lead("R1.1"), 99));
      assertThat(point.current(Rows.lead("R1.1"))).isCloseTo(0.01, within(EXACT));
      assertThat(point.volts(rows.at("a"), Rows.pin("R1.1"))).isCloseTo(1, within(EXACT));
    }
  }
}
