package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * MOSFETs in circuits of books, from memory: Sedra and Smith, Microelectronic Circuits 5e, with k =
 * ½·k'·W/L; Boylestad 10e with k as printed.
 */
@Tag("fast")
class MosfetTest {

  /** Sedra 4.2: V_t 0.7 V, k'W/L 3.2 mA/V², I_D 0.4 mA: V_D 0.5 V, R_D 5k, R_S 3.25k at ±2.5 V. */
  @Test
  @Published(Family.MOSFET)
  void sedrasDesign() {
    OperatingPoint point =
        Rows.solved(
            "B1 battery p 0 volts=2.5; B2 battery 0 m volts=2.5; R1 resistor p d ohms=5k;"
                + "R2 resistor s m ohms=3.25k; M1 nmos d 0 s threshold=0.7 k=1.6m");
    assertThat(point.current(Rows.lead("M1.d"))).isCloseTo(0.4e-3, within(1e-7));
    assertThat(point.volts(Rows.pin("M1.d"), Rows.pin("B1.-"))).isCloseTo(0.5, within(1e-3));
    assertThat(point.volts(Rows.pin("M1.s"), Rows.pin("B1.-"))).isCloseTo(-1.2, within(1e-3));
  }

  /** Sedra 4.3: drain on gate, V_t 0.6 V, k'W/L 1 mA/V², 3 V: 80 µA, V_D 1 V, R 25k. */
  @Test
  @Published(Family.MOSFET)
  void drainOnGate() {
    OperatingPoint point =
        Rows.solved(
            "B1 battery p 0 volts=3; R1 resistor p d ohms=25k; M1 nmos d d 0 threshold=0.6 k=0.5m");
    assertThat(point.current(Rows.lead("M1.d"))).isCloseTo(80e-6, within(1e-7));
    assertThat(point.volts(Rows.pin("M1.d"), Rows.pin("B1.-"))).isCloseTo(1.0, within(1e-3));
  }

  /**
   * Sedra 4.4: triode, V_t 1 V, k'W/L 1 mA/V², V_DD 5 V, V_DS 0.1 V: R_D 12.4k, I_D 0.395 mA, r_DS
   * 253 Ω.
   */
  @Test
  @Published(Family.MOSFET)
  void deepInTriode() {
    OperatingPoint point =
        Rows.solved(
            "B1 battery p 0 volts=5; R1 resistor p d ohms=12.4k; M1 nmos d p 0 threshold=1 k=0.5m");
    assertThat(point.current(Rows.lead("M1.d"))).isCloseTo(0.395e-3, within(1e-6));
    double drop = point.volts(Rows.pin("M1.d"), Rows.pin("B1.-"));
    assertThat(drop).isCloseTo(0.1, within(1e-3));
    assertThat(drop / point.current(Rows.lead("M1.d"))).isCloseTo(253, within(1.0));
  }

  /** Sedra 4.5: divider 10M/10M, 6k, 6k, 10 V, V_t 1 V, k'W/L 1 mA/V²: 0.5 mA, V_S 3, V_D 7 V. */
  @Test
  @Published(Family.MOSFET)
  void dividerBias() {
    OperatingPoint point =
        Rows.solved(
            "B1 battery p 0 volts=10; R1 resistor p g ohms=10M;"
                + "R2 resistor g 0 ohms=10M;"
                + "R3 resistor p d ohms=6k; R4 resistor s 0 ohms=6k; M1 nmos d g s threshold=1 k=0.5m");
    assertThat(point.current(Rows.lead("M1.d"))).isCloseTo(0.5e-3, within(1e-7));
    assertThat(point.volts(Rows.pin("M1.s"), Rows.pin("B1.-"))).isCloseTo(3, within(1e-3));
    assertThat(point.volts(Rows.pin("M1.d"), Rows.pin("B1.-"))).isCloseTo(7, within(1e-3));
  }

  /** Sedra 4.6: PMOS, V_t −1 V, k'W/L 1 mA/V², 5 V, V_G 3 V: 0.5 mA, V_D 3 V with R_D 6k. */
  @ParameterizedTest
  @CsvSource({"1", "-1"})
  @Published(Family.MOSFET)
  void aPChannel(String threshold) {
    OperatingPoint point =
        Rows.solved(
            "B1 battery p 0 volts=5; R1 resistor p g ohms=2M; R2 resistor g 0 ohms=3M;"
                + "R3 resistor d 0 ohms=6k; M1 pmos d g p k=0.5m threshold="
                + threshold);
    assertThat(-point.current(Rows.lead("M1.d"))).isCloseTo(0.5e-3, within(1e-7));
    assertThat(point.volts(Rows.pin("M1.d"), Rows.pin("B1.-"))).isCloseTo(3, within(1e-3));
  }

  /**
   * Boylestad 7.11: feedback bias, V_GS(Th) 3 V, k 0.24 mA/V², 12 V, R_D 2k, R_G 10M: 2.79 mA, V_GS
   * 6.42 V.
   */
  @Test
  @Published(Family.MOSFET)
  void boylestadsFeedback() {
    OperatingPoint point =
        Rows.solved(
            "B1 battery p 0 volts=12; R1 resistor p d ohms=2k; R2 resistor d g ohms=10M;"
                + "M1 nmos d g 0 threshold=3 k=0.24m");
    assertThat(point.current(Rows.lead("M1.d"))).isCloseTo(2.79e-3, within(1e-5));
    assertThat(point.volts(Rows.pin("M1.g"), Rows.pin("B1.-"))).isCloseTo(6.42, within(0.01));
  }

  /** A 2N7000 as a switch: sheet, at most 0.4 V at 75 mA and 4.5 V; off it lets nothing through. */
  @Test
  @Published(Family.MOSFET)
  void aSwitch() {
    String circuit =
        "B1 battery p 0 volts=5; B2 battery g 0 volts=%s; R1 resistor p d ohms=62;"
            + "M1 nmos d g 0 type=2N7000";
    OperatingPoint on = Rows.solved(circuit.formatted("4.5"));
    assertThat(on.volts(Rows.pin("M1.d"), Rows.pin("M1.s"))).isBetween(0.0, 0.4);
    OperatingPoint off = Rows.solved(circuit.formatted("0.5"));
    assertThat(off.current(Rows.lead("M1.d"))).isCloseTo(0, within(1e-9));
  }

  /** More, from memory: Neamen 2e; Boylestad 10e reads its answer off a graph. */
  static Stream<Example> rows() {
    return Stream.of(
        Example.of(
            "Boylestad 7.12, divider",
            "B1 battery p 0 volts=40; R1 resistor p g ohms=22M; R2 resistor g 0 ohms=18M;"
                + "R3 resistor p d ohms=3k; R4 resistor s 0 ohms=820;"
                + "M1 nmos d g s threshold=5 k=0.12m",
            "I(M1.d)=6.7m~1%",
            "V(g,s)=12.5~1%",
            "V(d,s)=14.4~1%"),
        Example.of(
            "Neamen 5.3, common source",
            "B1 battery p 0 volts=5; R1 resistor p g ohms=30k; R2 resistor g 0 ohms=20k;"
                + "R3 resistor p d ohms=20k; M1 nmos d g 0 threshold=1 k=0.1m",
            "V(g,0)=2",
            "I(M1.d)=0.1m",
            "V(d,0)=3"),
        Example.of(
            "Neamen 5.4, a P channel that turns out to be in triode",
            "B1 battery p 0 volts=5; R1 resistor p g ohms=50k; R2 resistor g 0 ohms=50k;"
                + "R3 resistor d 0 ohms=7.5k; M1 pmos d g p threshold=0.8 k=0.2m",
            "V(p,g)=2.5",
            "I(M1.s)=0.515m",
            "V(p,d)=1.14"));
  }

  @ParameterizedTest
  @Published(Family.MOSFET)
  @MethodSource("rows")
  void agreesWithTheBook(Example example) {
    example.check();
  }
}
