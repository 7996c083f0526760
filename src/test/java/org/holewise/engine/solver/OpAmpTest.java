package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Op-amps. LEC: Kuphaldt, Lessons in Electric Circuits, Semiconductors; Boylestad: Electronic
 * Devices and Circuit Theory 10e. The books' op-amps are ideal: where a row has a gain of its own,
 * it is so large that its error is below the digits. Where it is met to a share only, what the
 * inputs draw through 1 GΩ each is that share, which ideal inputs would not.
 */
@Tag("fast")
class OpAmpTest {
  /** An input is moved over twice a threshold and a bit in so many steps. */
  private static final int STEPS = 110;

  /** Half a chip on ±20 V, with nothing lost at its supply pins: pins 1 2 3 are out, −, +. */
  static String half(String out, String minus, String plus, String fields) {
    return "V1 battery top 0 volts=20; V2 battery 0 bottom volts=20;"
        + "U1 dual-opamp %s %s %s bottom n5 n6 n7 top type=generic %s;"
            .formatted(out, minus, plus, fields);
  }

  static Stream<Example> rows() {
    String ideal = "gain=1e7";
    return Stream.of(
        Example.of(
            "O2 Boylestad 10.5, inverting",
            half("out", "n", "0", ideal)
                + "B1 battery in 0 volts=2; R1 resistor in n ohms=100k; R2 resistor n out"
                + " ohms=500k",
            "V(out,0)=-10~0.15%"),
        Example.of(
            "O2 Boylestad 10.6, non-inverting",
            half("out", "n", "in", ideal)
                + "B1 battery in 0 volts=2; R1 resistor 0 n ohms=100k; R2 resistor n out ohms=500k",
            "V(out,0)=12~0.15%"),
        Example.of(
            "O4 Boylestad 10.8, offset",
            half("out", "n", "0", "gain=1e7 offset=1.2m")
                + "R1 resistor 0 n ohms=2k; R2 resistor n out ohms=150k",
            "V(out,0)=91.2m~3.5%"),
        Example.of(
            "summing, 330k over 33k and 10k (calc)",
            half("out", "n", "0", ideal)
                + "B1 battery a 0 volts=0.05; B2 battery b 0 volts=0.01;"
                + "R1 resistor a n ohms=33k; R2 resistor b n ohms=10k; R3 resistor n out ohms=330k",
            "V(out,0)=-0.830~1%"),
        Example.of(
            "difference of 5 and 3 V, twice (calc)",
            half("out", "n", "p", ideal)
                + "B1 battery a 0 volts=3; B2 battery b 0 volts=5;"
                + "R1 resistor a n ohms=10k; R2 resistor n out ohms=20k;"
                + "R3 resistor b p ohms=10k; R4 resistor p 0 ohms=20k",
            "V(out,0)=4.000~0.02%"),
        summing(
            "Boylestad 10.7a (from memory)",
            "B1 battery a 0 volts=1; B2 battery b 0 volts=2; B3 battery c 0 volts=3;"
                + "R1 resistor a n ohms=500k; R2 resistor b n ohms=1M; R3 resistor c n ohms=1M",
            "-7"),
        summing(
            "Boylestad 10.7b (from memory)",
            "B1 battery 0 a volts=2; B2 battery b 0 volts=3; B3 battery c 0 volts=1;"
                + "R1 resistor a n ohms=200k; R2 resistor b n ohms=500k; R3 resistor c n ohms=1M",
            "3"),
        Example.of(
            "LEC SEMI 8, instrumentation amplifier, 1 + 2R/R_gain of 51 (calc)",
            half("x", "m", "a", ideal).replace("n5 n6 n7", "b k y")
                + "U2 dual-opamp out n p bottom n8 n9 n10 top type=generic gain=1e7;"
                + "B1 battery a 0 volts=1; B2 battery b 0 volts=1.01; R1 resistor x m ohms=25k;"
                + "R2 resistor m k ohms=1k; R3 resistor k y ohms=25k; R4 resistor x n ohms=10k;"
                + "R5 resistor n out ohms=10k; R6 resistor y p ohms=10k; R7 resistor p 0 ohms=10k",
            "V(out,0)=0.510~0.1%"),
        loop("LEC SEMI 8, 1 V into 250 ohms", "1", "4m"),
        loop("LEC SEMI 8, 5 V into 250 ohms", "5", "20m"),
        Example.of(
            "Horowitz & Hill 4, active rectifier (from memory)",
            half("o", "out", "in", ideal)
                + "B1 battery in 0 volts=10m; D1 diode o out; R1 resistor out 0 ohms=10k",
            "V(out,0)=10.0m"),
        Example.of(
            "TL072 sheet: within 1 V of its supply pins",
            "V1 battery top 0 volts=15; V2 battery 0 bottom volts=15;B1 battery in 0 volts=1;U1"
                + " dual-opamp out 0 in bottom n5 n6 n7 top type=TL072; R1 resistor out 0 ohms=10k",
            "V(out,0)=14.00"));
  }

  private static Example summing(String source, String inputs, String volts) {
    return Example.of(
        source,
        half("out", "n", "0", "gain=1e7") + inputs + "; R4 resistor n out ohms=1M",
        "V(out,0)=" + volts + "~0.7%");
  }

  /** A voltage makes a current, whatever it flows through. */
  private static Example loop(String source, String volts, String amps) {
    return Example.of(
        source,
        half("out", "n", "in", "gain=1e7")
            + "B1 battery in 0 volts=%s; R1 resistor n 0 ohms=250; R2 resistor out n ohms=300"
                .formatted(volts),
        "I(R2.1)=" + amps + "~0.01%");
  }

  /** Voltage at the input at which the output turns, going on from where it was. */
  private static double turns(String circuit, double from, double to) {
    OperatingPoint point = Rows.solved(circuit.formatted(Double.toString(from)));
    double start = point.volts(Rows.pin("U1.1"));
    for (int step = 1; step <= STEPS; step++) {
      double volts = from + (to - from) * step / STEPS;
      Circuit next = Rows.circuit(circuit.formatted(Double.toString(volts)));
      point = (OperatingPoint) OperatingPointSolver.solve(next, point);
      if (point.volts(Rows.pin("U1.1")) * start < 0) {
        return volts;
      }
    }
    throw new AssertionError("never turns");
  }

  /**
   * Thresholds of a Schmitt trigger are ±R2/(R1 + R2) of what its output reaches (Sedra and Smith
   * 5e, 13.4; Malvino 7e, 22-2; from memory): on ±20 V, and the drive that turns it is less than a
   * step.
   */
  @ParameterizedTest
  @Published(Family.OP_AMP)
  @CsvSource({"10k, 5k, 6.667", "47k, 1k, 0.4167", "100k, 100k, 10.0"})
  void aSchmittTriggerTurnsAtItsThresholds(String upper, String lower, double volts) {
    String circuit =
        half("out", "in", "p", "gain=1e5")
            + "B1 generator in 0 volts=0 hertz=1 output=0 offset=%s;"
            + "R1 resistor out p ohms="
            + upper
            + "; R2 resistor p 0 ohms="
            + lower;
    double slack = 2 * 2.2 * volts / STEPS;
    assertThat(turns(circuit, -1.1 * volts, 1.1 * volts)).isCloseTo(volts, within(slack));
    assertThat(turns(circuit, 1.1 * volts, -1.1 * volts)).isCloseTo(-volts, within(slack));
  }

  @ParameterizedTest
  @Published(Family.OP_AMP)
  @MethodSource("rows")
  void agreesWithTheBook(Example example) {
    example.check();
  }

  /** O1: LEC SEMI 8, a follower of gain 200,000 at 6 V: 5.999970000150 V. */
  @Test
  @Published(Family.OP_AMP)
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
  @Published(Family.OP_AMP)
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
  @Published(Family.OP_AMP)
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
  @Published(Family.OP_AMP)
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

  /**
   * Common practice: a three-terminal regulator only sources (LM78XX sheet: its output stage is a
   * follower). What reaches its output through 100 Ω stays there where it is higher.
   */
  @ParameterizedTest
  @CsvSource({"6, 6, 0", "5.5, 5.5, 0", "4, 5, 10e-3", "-1, 5, 60e-3"})
  @Published(Family.OP_AMP)
  void aRegulatorCannotPullItsOutputDown(double from, double out, double sourced) {
    Rows rows =
        Rows.of(
            "V1 battery in 0 volts=9; U1 regulator in 0 out volts=5; R1 resistor out x ohms=100;"
                + "V2 battery x 0 volts="
                + from);
    OperatingPoint point = Rows.solved(rows.circuit());
    assertThat(point.volts(rows.at("out"), rows.at("0"))).isCloseTo(out, within(1e-3));
    assertThat(-point.current(Rows.lead("U1.out"))).isCloseTo(sourced, within(1e-6));
    assertThat(point.current(Rows.lead("U1.in"))).isCloseTo(5e-3 + sourced, within(1e-6));
  }

  /** Of two outputs on one wire the higher one works alone. */
  @Test
  void regulatorsOnOneWireDoNotFight() {
    Rows rows =
        Rows.of(
            "V1 battery in 0 volts=9; U1 regulator in 0 out volts=4.9;"
                + "U2 regulator in 0 out volts=5.1; R1 resistor out 0 ohms=100");
    OperatingPoint point = Rows.solved(rows.circuit());
    assertThat(point.volts(rows.at("out"), rows.at("0"))).isCloseTo(5.1, within(1e-3));
    assertThat(point.current(Rows.lead("U1.out"))).isCloseTo(0, within(1e-6));
    assertThat(point.current(Rows.lead("U2.out"))).isCloseTo(-51e-3, within(1e-6));
  }
}
