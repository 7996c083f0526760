package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gates against the function tables of their data sheets, on the pins that the sheets give. */
@Tag("fast")
class GateTablesTest {

  /**
   * Pins and tables: SN74HC00 SCLS181, SN74HC02 SCLS076, SN74HC08 SCLS081, SN74HC32 SCLS200,
   * SN74HC86 SCLS100 (Texas Instruments); the table is Y for AB of 00, 01, 10, 11.
   */
  @ParameterizedTest
  @CsvSource({
    "7400, 1 2 3, HHHL",
    "7400, 4 5 6, HHHL",
    "7400, 10 9 8, HHHL",
    "7400, 13 12 11, HHHL",
    "7402, 2 3 1, HLLL",
    "7402, 5 6 4, HLLL",
    "7402, 8 9 10, HLLL",
    "7402, 11 12 13, HLLL",
    "7408, 1 2 3, LLLH",
    "7408, 13 12 11, LLLH",
    "7432, 4 5 6, LHHH",
    "7432, 10 9 8, LHHH",
    "7486, 1 2 3, LHHL",
    "7486, 10 9 8, LHHL"
  })
  @Published(Family.LOGIC)
  void aGateOfTwoInputsKeepsToItsTable(String kind, String pins, String table) {
    for (String family : new String[] {"HC", "HCT", "LS"}) {
      var found = new StringBuilder();
      for (int row = 0; row < 4; row++) {
        found.append(level(kind, family, pins, row));
      }
      assertThat(found.toString()).as(family).isEqualTo(table);
    }
  }

  private static String level(String kind, String family, String pins, int row) {
    String[] pin = pins.split(" ");
    String a = row < 2 ? "0" : "5";
    String b = row % 2 == 0 ? "0" : "5";
    var bread =
        new Bread()
            .chip(
                "U1 "
                    + kind
                    + " "
                    + pin[0]
                    + "="
                    + a
                    + " "
                    + pin[1]
                    + "="
                    + b
                    + " family="
                    + family);
    double volts = volts(bread.settled(), bread, "U1." + pin[2]);
    return volts > 2.5 ? "H" : "L";
  }

  private static double volts(Settled settled, Bread bread, String pin) {
    return Bread.point(settled).volts(Rows.pin(pin), bread.rows().at("0"));
  }

  /** Pins of SN74HC04 (SCLS078) and SN74HC14 (SCLS085): input and output of each inverter. */
  @ParameterizedTest
  @CsvSource({"1, 2", "3, 4", "5, 6", "9, 8", "11, 10", "13, 12"})
  @Published(Family.LOGIC)
  void anInverterTurnsItsInput(String in, String out) {
    for (String kind : new String[] {"7404", "7414"}) {
      var low = new Bread().chip("U1 " + kind + " " + in + "=0");
      var high = new Bread().chip("U1 " + kind + " " + in + "=5");
      assertThat(volts(low.settled(), low, "U1." + out)).isCloseTo(5, within(1e-6));
      assertThat(volts(high.settled(), high, "U1." + out)).isCloseTo(0, within(1e-6));
    }
  }

  /** MM74HC04, typical at 4.5 V: 4.2 V at −4 mA, 0.2 V at 4 mA. */
  @Test
  @Published(Family.LOGIC)
  void aLoadedOutputOfTheHcFamilyGivesWayAsItsSheetHasIt() {
    var high = new Bread(4.5).chip("U1 7404 1=0 2=y").rows("R1 resistor y 0 ohms=1050");
    assertThat(volts(high.settled(), high, "U1.2")).isCloseTo(4.2, within(0.005));
    var low = new Bread(4.5).chip("U1 7404 1=5 2=y").rows("R1 resistor 5 y ohms=1075");
    assertThat(volts(low.settled(), low, "U1.2")).isCloseTo(0.2, within(0.005));
  }

  /** DM74LS00: typically 3.4 V high at −0.4 mA and 0.35 V low at 8 mA. */
  @Test
  @Published(Family.LOGIC)
  void aLoadedOutputOfTheLsFamilyGivesWayAsItsSheetHasIt() {
    var high = new Bread().chip("U1 7404 1=0 2=y family=LS").rows("R1 resistor y 0 ohms=8.5k");
    assertThat(volts(high.settled(), high, "U1.2")).isCloseTo(3.4, within(0.01));
    var low = new Bread().chip("U1 7404 1=5 2=y family=LS").rows("R1 resistor 5 y ohms=581");
    assertThat(volts(low.settled(), low, "U1.2")).isCloseTo(0.35, within(0.005));
  }

  /** CD4011B, typical: 1 mA at 0.4 V from the rail at 5 V, 2.6 mA at 0.5 V at 10 V. */
  @ParameterizedTest
  @CsvSource({"5, 0.4, 1e-3, 0.01", "10, 0.5, 2.6e-3, 0.05"})
  @Published(Family.LOGIC)
  void aLoadedOutputOfThe4000FamilyGivesWayAsItsSheetHasIt(
      double supply, double drop, double amps, double slack) {
    double ohms = (supply - drop) / amps;
    var low =
        new Bread(supply).chip("U1 7404 1=5 2=y family=CMOS").rows("R1 resistor 5 y ohms=" + ohms);
    assertThat(volts(low.settled(), low, "U1.2")).isCloseTo(drop, within(slack));
  }

  /** Kuphaldt, Lessons in Electric Circuits, Digital 3: TTL inputs float high; CMOS must not. */
  @Test
  @Published(Family.LOGIC)
  void anOpenInputIsHighForTtlAndUndefinedForCmos() {
    assertThat(Bread.outputs(new Bread().chip("U1 7404 family=LS").settled(), "U1"))
        .isEqualTo("LLLLLL");
    assertThat(Bread.outputs(new Bread().chip("U1 7404").settled(), "U1")).isEqualTo("??????");
  }

  @Test
  void anInputThatNeedNotBeKnownDoesNotSpoilAGate() {
    assertThat(Bread.outputs(new Bread().chip("U1 7400 1=0 4=5").settled(), "U1"))
        .isEqualTo("H???");
  }

  /** MM74HC04 at 4.5 V: up to 1.35 V is low, from 3.15 V high; SN74HCT00: 0.8 and 2.0 V. */
  @ParameterizedTest
  @CsvSource({
    "HC, 1.35, H",
    "HC, 1.36, ?",
    "HC, 3.14, ?",
    "HC, 3.15, L",
    "HCT, 0.8, H",
    "HCT, 0.81, ?",
    "HCT, 1.99, ?",
    "HCT, 2.0, L"
  })
  @Published(Family.LOGIC)
  void betweenItsThresholdsALevelIsUndefined(String family, double volts, String out) {
    var bread =
        new Bread(4.5).rows("B2 battery in 0 volts=" + volts).chip("U1 7404 1=in family=" + family);
    assertThat(Bread.outputs(bread.settled(), "U1")).startsWith(out);
  }

  /** SN74HC14 (SCLS085), typical at 4.5 V: up at 2.5 V, down at 1.6 V; SN74LS14: 1.6 and 0.8 V. */
  @ParameterizedTest
  @CsvSource({
    "HC, 4.5, 1.6, H",
    "HC, 4.5, 2.5, L",
    "HC, 4.5, 2.0, ?",
    "LS, 5, 0.79, H",
    "LS, 5, 1.61, L"
  })
  @Published(Family.LOGIC)
  void aSchmittInputTurnsAtItsOwnThresholds(
      String family, double supply, double volts, String out) {
    var bread =
        new Bread(supply)
            .rows("B2 battery in 0 volts=" + volts)
            .chip("U1 7414 1=in family=" + family);
    assertThat(Bread.outputs(bread.settled(), "U1")).startsWith(out);
  }

  @Test
  void aPairOfCrossedGatesRemembers() {
    String latch = " 1=s 2=qn 3=q 4=q 5=r 6=qn";
    var set =
        new Bread()
            .rows("R1 resistor s 0 ohms=1k; R2 resistor r 5 ohms=1k")
            .chip("U1 7400" + latch);
    assertThat(Bread.outputs(set.settled(), "U1")).startsWith("HL");
    var open =
        new Bread()
            .rows("R1 resistor s 5 ohms=1k; R2 resistor r 5 ohms=1k")
            .chip("U1 7400" + latch);
    assertThat(Bread.outputs(open.settled(), "U1")).startsWith("??");
    assertThat(open.settled().swinging()).hasSize(2);
  }

  @Test
  void threeInvertersInARingSwing() {
    Settled ring = new Bread().chip("U1 7404 1=a 2=b 3=b 4=c 5=c 6=a").settled();
    assertThat(ring.swinging())
        .extracting(Object::toString)
        .containsExactlyInAnyOrder("U1.2", "U1.4", "U1.6");
    assertThat(Bread.outputs(ring, "U1")).startsWith("???");
  }

  @Test
  void twoOutputsOnOneWireClashWhereTheyDiffer() {
    Settled fight = new Bread().chip("U1 7404 1=0 2=y 3=5 4=y").settled();
    assertThat(fight.clashes()).hasSize(1);
    assertThat(fight.clashes().get(0).toString()).contains("U1.2").contains("U1.4");
    assertThat(new Bread().chip("U1 7404 1=0 2=y 3=0 4=y").settled().clashes()).isEmpty();
  }

  @Test
  void aChipWithoutSupplyDrivesNothing() {
    assertThat(Bread.outputs(new Bread().chip("U1 7404 1=0 14=x").settled(), "U1"))
        .isEqualTo("------");
  }
}
