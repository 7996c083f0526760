package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Op-amps. LEC: Kuphaldt, Lessons in Electric Circuits, Semiconductors; Boylestad: Electronic
 * Devices and Circuit Theory 10e. The books' op-amps are ideal: where a row has a gain of its own,
 * it is so large that its error is below the digits. Where it is met to a share only, what the
 * inputs draw through 1 GΩ each is that share, which ideal inputs would not.
 */
@Tag("fast")
class OpAmpTest {
  /** Half a chip on ±20 V, with nothing lost at its supply pins: pins 1 2 3 are out, −, +. */
  static String half(String out, String minus, String plus, String fields) {
    return "V1 battery top 0 volts=20; V2 battery 0 bottom volts=20;"
        + "U1 dual-opamp %s %s %s bottom n5 n6 n7 top type=generic %s;"
            .formatted(out, minus, plus, fields);
  }

  record Row(String source, String circuit, List<String> expected) {
    @Override
    public String toString() {
      return source;
    }
  }

  private static Row row(String source, String circuit, String... expected) {
    return new Row(source, circuit, List.of(expected));
  }

  static Stream<Row> rows() {
    String ideal = "gain=1e7";
    return Stream.of(
        row(
            "O2 Boylestad 10.5, inverting",
            half("out", "n", "0", ideal)
                + "B1 battery in 0 volts=2; R1 resistor in n ohms=100k; R2 resistor n out ohms=500k",
            "V(out,0)=-10~0.15%"),
        row(
            "O2 Boylestad 10.6, non-inverting",
            half("out", "n", "in", ideal)
                + "B1 battery in 0 volts=2; R1 resistor 0 n ohms=100k; R2 resistor n out ohms=500k",
            "V(out,0)=12~0.15%"),
        row(
            "O4 Boylestad 10.8, offset",
            half("out", "n", "0", "gain=1e7 offset=1.2m")
                + "R1 resistor 0 n ohms=2k; R2 resistor n out ohms=150k",
            "V(out,0)=91.2m~3.5%"),
        row(
            "summing, 330k over 33k and 10k (calc)",
            half("out", "n", "0", ideal)
                + "B1 battery a 0 volts=0.05; B2 battery b 0 volts=0.01;"
                + "R1 resistor a n ohms=33k; R2 resistor b n ohms=10k; R3 resistor n out ohms=330k",
            "V(out,0)=-0.830~1%"),
        row(
            "difference of 5 and 3 V, twice (calc)",
            half("out", "n", "p", ideal)
                + "B1 battery a 0 volts=3; B2 battery b 0 volts=5;"
                + "R1 resistor a n ohms=10k; R2 resistor n out ohms=20k;"
                + "R3 resistor b p ohms=10k; R4 resistor p 0 ohms=20k",
            "V(out,0)=4.000~0.02%"));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheBook(Row row) {
    Rows rows = Rows.of(row.circuit());
    OperatingPoint point = Rows.solved(rows.circuit());
    row.expected().forEach(text -> Expected.read(text).check(rows, point));
  }

  /** O1: LEC SEMI 8, a follower of gain 200,000 at 6 V: 5.999970000150 V. */
  @Test
  void aFollowerIsOffByItsGain() {
    Rows rows =
        Rows.of(
            half("out", "out", "in", "gain=200000").replace("volts=20", "volts=1e6")
                + "B1 battery in 0 volts=6");
    double out = Rows.solved(rows.circuit()).volts(rows.at("out"), rows.at("0"));
    assertThat(out).isCloseTo(5.999970000150, within(2e-9));
  }

  /** LEC SEMI 8: out of reach of its supply, an LM358 stops 1.4 V below it and at 20 mV (laws). */
  @Test
  void itsOutputStopsShortOfItsSupply() {
    String circuit =
        "V1 battery top 0 volts=9; B1 battery in 0 volts=%s;"
            + "U1 dual-opamp out n in 0 n5 n6 n7 top; R1 resistor 0 n ohms=10k;"
            + "R2 resistor n out ohms=90k";
    Rows up = Rows.of(circuit.formatted("2"));
    assertThat(Rows.solved(up.circuit()).volts(up.at("out"), up.at("0")))
        .isCloseTo(7.6, within(1e-4));
    Rows down = Rows.of(circuit.formatted("0"));
    assertThat(Rows.solved(down.circuit()).volts(down.at("out"), down.at("0")))
        .isBetween(0.0, 0.021);
  }

  /** What a load draws comes out of pin 8, what is pushed in goes to pin 4. */
  @Test
  void currentComesFromTheSupply() {
    OperatingPoint point =
        Rows.solved(
            half("out", "out", "in", "gain=1e6")
                + "B1 battery in 0 volts=5; R1 resistor out 0 ohms=1k");
    assertThat(point.current(Rows.lead("U1.8"))).isCloseTo(5e-3, within(1e-6));
    assertThat(point.current(Rows.lead("U1.4"))).isCloseTo(0, within(1e-6));
    OperatingPoint sinks =
        Rows.solved(
            half("out", "out", "in", "gain=1e6")
                + "B1 battery in 0 volts=-5; R1 resistor out 0 ohms=1k");
    assertThat(sinks.current(Rows.lead("U1.4"))).isCloseTo(-5e-3, within(1e-6));
  }

  /** Below 2 V of supply the output is open (laws). */
  @Test
  void withoutSupplyItLetsGo() {
    Rows rows =
        Rows.of(
            "V1 battery top 0 volts=1.5; B1 battery in 0 volts=1; U1 dual-opamp out out in 0 n5 n6"
                + " n7 top; R1 resistor out 0 ohms=100k");
    assertThat(Rows.solved(rows.circuit()).volts(rows.at("out"), rows.at("0")))
        .isCloseTo(0, within(1e-3));
  }

  /**
   * A Schmitt trigger (Kuphaldt, Semiconductors 8): beyond its thresholds there is one state, and
   * between them it stands at an end of its range, never in the middle.
   */
  @Test
  void aSchmittTriggerNeverStandsInTheMiddle() {
    for (String in : List.of("-9", "-2", "0", "2", "9")) {
      Rows rows =
          Rows.of(
              half("out", "in", "p", "gain=1e5")
                  + "B1 battery in 0 volts="
                  + in
                  + "; R1 resistor out p ohms=10k; R2 resistor p 0 ohms=5k");
      double out = Rows.solved(rows.circuit()).volts(rows.at("out"), rows.at("0"));
      assertThat(Math.abs(out)).as(in).isCloseTo(20, within(1e-3));
      if (in.endsWith("9")) {
        assertThat(Math.signum(out)).isEqualTo(in.startsWith("-") ? 1 : -1);
      }
    }
  }

  /** LM393 sheet: 250 mV typical at 4 mA, 400 mV at most; it lets go where + is higher. */
  @Test
  void aComparatorPullsDownOrLetsGo() {
    String circuit =
        "V1 battery top 0 volts=5; B1 battery p 0 volts=%s; B2 battery m 0 volts=2.5;"
            + "U1 comparator out m p 0 n5 n6 n7 top; R1 resistor top out ohms=1.2k";
    Rows low = Rows.of(circuit.formatted("2"));
    assertThat(Rows.solved(low.circuit()).volts(low.at("out"), low.at("0"))).isBetween(0.2, 0.4);
    Rows high = Rows.of(circuit.formatted("3"));
    assertThat(Rows.solved(high.circuit()).volts(high.at("out"), high.at("0")))
        .isCloseTo(5, within(1e-3));
  }

  /** LM78XX sheet: 5 V out, 2 V of dropout, 5 mA of its own. */
  @Test
  void aRegulatorHoldsItsVoltageWhileItCan() {
    String circuit =
        "V1 battery in 0 volts=%s; U1 regulator in 0 out volts=5; R1 resistor out 0 ohms=100";
    Rows rows = Rows.of(circuit.formatted("9"));
    OperatingPoint point = Rows.solved(rows.circuit());
    assertThat(point.volts(rows.at("out"), rows.at("0"))).isCloseTo(5, within(1e-4));
    assertThat(point.current(Rows.lead("U1.in"))).isCloseTo(55e-3, within(1e-6));
    assertThat(point.power("U1")).isCloseTo(9 * 55e-3 - 5 * 50e-3, within(1e-4));
    Rows drops = Rows.of(circuit.formatted("6"));
    assertThat(Rows.solved(drops.circuit()).volts(drops.at("out"), drops.at("0")))
        .isCloseTo(4, within(1e-3));
  }
}
