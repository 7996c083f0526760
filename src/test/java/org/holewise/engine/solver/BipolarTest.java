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
 * Worked examples of bias. IS is fitted so that the base-emitter voltage is the book's at the row's
 * current; "beta to infinity" is a gain of 1e9. Where a book writes RB/β for RB/(β+1), its current
 * lies between the collector's and the emitter's, and the row says so.
 */
@Tag("fast")
class BipolarTest {
  private static final double THERMAL = 1.380649e-23 * 298.15 / 1.602176634e-19;

  /** Fields of a transistor with that gain whose collector carries so much at so many volts. */
  private static String fitted(double gain, double amps, double volts) {
    return "gain=%s saturation=%s".formatted(gain, amps / Math.expm1(volts / THERMAL));
  }

  private static double into(OperatingPoint point, String pin) {
    return point.current(Rows.lead(pin));
  }

  private static double over(OperatingPoint point) {
    return point.volts(Rows.pin("Q1.c"), Rows.pin("Q1.e"));
  }

  /** B1 Boylestad 4.1, B2 Malvino 6-8: base resistor to the supply. */
  @ParameterizedTest
  @CsvSource({
    "12, 240k, 2.2k, 50, 47.08e-6, 1e-8, 2.35e-3, 1e-5, 6.82",
    "15, 470k, 3.6k, 100, 30.43e-6, 1e-8, 3.04e-3, 1e-5, 4.05"
  })
  @Published(Family.BIPOLAR)
  void fixedBias(
      String supply,
      String base,
      String collector,
      double gain,
      double baseAmps,
      double baseSlack,
      double amps,
      double slack,
      double volts) {
    double exact = gain * (Rows.number(supply) - 0.7) / Rows.number(base);
    OperatingPoint solved =
        Rows.solved(
            "B1 battery v 0 volts=%s; R1 resistor v b ohms=%s; R2 resistor v c ohms=%s;"
                    .formatted(supply, base, collector)
                + "Q1 npn c b 0 "
                + fitted(gain, exact, 0.7));
    assertThat(into(solved, "Q1.b")).isCloseTo(baseAmps, within(baseSlack));
    assertThat(into(solved, "Q1.c")).isCloseTo(amps, within(slack));
    assertThat(over(solved)).isCloseTo(volts, within(0.01));
  }

  /** B3: Floyd 7e, 4.2. */
  @Test
  @Published(Family.BIPOLAR)
  void aBaseSupplyOfItsOwn() {
    OperatingPoint solved =
        Rows.solved(
            "B1 battery v 0 volts=10; B2 battery d 0 volts=5; R1 resistor d b ohms=10k;"
                + "R2 resistor v c ohms=100; Q1 npn c b 0 "
                + fitted(150, 64.5e-3, 0.7));
    assertThat(into(solved, "Q1.b")).isCloseTo(430e-6, within(1e-6));
    assertThat(into(solved, "Q1.c")).isCloseTo(64.5e-3, within(1e-4));
    assertThat(over(solved)).isCloseTo(3.55, within(0.01));
  }

  /** B4: Floyd 4.4; V_CE(sat) 0.2 V. */
  @Test
  @Published(Family.BIPOLAR)
  void saturates() {
    OperatingPoint solved =
        Rows.solved(
            "B1 battery v 0 volts=10; B2 battery d 0 volts=3; R1 resistor d b ohms=10k;"
                + "R2 resistor v c ohms=1k; Q1 npn c b 0 "
                + fitted(50, 9.8e-3, 0.7));
    assertThat(over(solved)).isBetween(0.0, 0.2);
    assertThat(into(solved, "Q1.c")).isCloseTo(9.8e-3, within(0.2e-3));
    assertThat(into(solved, "Q1.c")).isLessThan(0.95 * 50 * into(solved, "Q1.b"));
  }

  /** B6 (collector feedback), B7 and B9 (emitter bias): Kuphaldt, Semiconductors 4. */
  @ParameterizedTest
  @CsvSource({
    "B6, 100, 0.989e-3",
    "B6, 300, 1.48e-3",
    "B7, 100, 1.01e-3",
    "B7, 300, 1.75e-3",
    "B9, 100, 1.00e-3",
    "B9, 300, 1.38e-3"
  })
  @Published(Family.BIPOLAR)
  void feedback(String row, double gain, double printed) {
    String rest =
        switch (row) {
          case "B6" -> "R1 resistor c b ohms=470k; R2 resistor v c ohms=4.7k; Q1 npn c b 0 ";
          case "B7" ->
              "B2 battery d 0 volts=2; R1 resistor d b ohms=82k; R2 resistor e 0 ohms=470;"
                  + "Q1 npn v b e ";
          default ->
              "B2 battery d 0 volts=1.5; R1 resistor d b ohms=33k; R2 resistor e 0 ohms=470;"
                  + "Q1 npn v b e ";
        };
    OperatingPoint solved =
        Rows.solved("B1 battery v 0 volts=10; " + rest + fitted(gain, printed, 0.7));
    double half = 0.005 * printed;
    assertThat(into(solved, "Q1.c")).isLessThan(printed + half);
    assertThat(-into(solved, "Q1.e")).isGreaterThan(printed - half);
    assertThat(into(solved, "Q1.c")).isCloseTo(printed, within(printed * 1.2 / gain + half));
  }

  private static OperatingPoint divider(
      String supply, String upper, String lower, String collector, String emitter, String fields) {
    return Rows.solved(
        "B1 battery v 0 volts=%s; R1 resistor v b ohms=%s; R2 resistor b 0 ohms=%s;"
                .formatted(supply, upper, lower)
            + "R3 resistor v c ohms=%s; R4 resistor e 0 ohms=%s; Q1 npn c b e %s"
                .formatted(collector, emitter, fields));
  }

  /** B10: Malvino 8-1, beta to infinity; beta 200 by calculation. */
  @Test
  @Published(Family.BIPOLAR)
  void malvinosDivider() {
    OperatingPoint solved = divider("10", "10k", "2.2k", "3.6k", "1k", fitted(1e9, 1.103e-3, 0.7));
    assertThat(into(solved, "Q1.c")).isCloseTo(1.10e-3, within(1e-5));
    assertThat(over(solved)).isCloseTo(4.92, within(0.01));
    OperatingPoint finite = divider("10", "10k", "2.2k", "3.6k", "1k", fitted(200, 1.0881e-3, 0.7));
    assertThat(-into(finite, "Q1.e")).isCloseTo(1.0935e-3, within(1e-7));
    assertThat(over(finite)).isCloseTo(4.990, within(0.001));
  }

  /** B11: Floyd 5.3, beta to infinity; beta 100 by calculation. */
  @Test
  @Published(Family.BIPOLAR)
  void floydsDivider() {
    OperatingPoint solved = divider("10", "10k", "5.6k", "1k", "560", fitted(1e9, 5.16e-3, 0.7));
    assertThat(into(solved, "Q1.c")).isCloseTo(5.16e-3, within(1e-5));
    assertThat(over(solved)).isCloseTo(1.95, within(0.01));
    OperatingPoint finite = divider("10", "10k", "5.6k", "1k", "560", fitted(100, 4.804e-3, 0.7));
    assertThat(into(finite, "Q1.c")).isCloseTo(4.804e-3, within(1e-6));
    assertThat(over(finite)).isCloseTo(2.478, within(0.001));
  }

  /** B12: Floyd 5.4, a PNP with its emitter up. */
  @Test
  @Published(Family.BIPOLAR)
  void floydsPnp() {
    OperatingPoint solved =
        Rows.solved(
            "B1 battery v 0 volts=10; R1 resistor b 0 ohms=22k; R2 resistor v b ohms=10k;"
                + "R3 resistor c 0 ohms=2.2k; R4 resistor v e ohms=1k; Q1 pnp c b e "
                + fitted(1e9, 2.425e-3, 0.7));
    assertThat(-into(solved, "Q1.c")).isCloseTo(2.43e-3, within(1e-5));
    assertThat(-over(solved)).isCloseTo(2.24, within(0.01));
  }

  /** B13: Floyd 5.7; the book's current is IE with RB/β for RB/(β+1), and IC is taken as IE. */
  @ParameterizedTest
  @CsvSource({"85, 0.7, 1.727e-3, 14.61", "100, 0.6, 1.764e-3, 14.07"})
  @Published(Family.BIPOLAR)
  void emitterBias(double gain, double base, double printed, double volts) {
    OperatingPoint solved =
        Rows.solved(
            "B1 battery p 0 volts=20; B2 battery 0 m volts=20; R1 resistor b 0 ohms=100k;"
                + "R2 resistor e m ohms=10k; R3 resistor p c ohms=4.7k; Q1 npn c b e "
                + fitted(gain, printed, base));
    assertThat(into(solved, "Q1.c")).isLessThan(printed);
    assertThat(-into(solved, "Q1.e")).isGreaterThan(printed - 0.5e-6);
    assertThat(into(solved, "Q1.c")).isCloseTo(printed, within(printed * 1.2 / gain));
    assertThat(over(solved)).isCloseTo(volts, within(printed * 14.7e3 / gain));
  }

  /** B15: Grob 28-13, beta to infinity. */
  @Test
  @Published(Family.BIPOLAR)
  void grobsDivider() {
    OperatingPoint solved = divider("18", "33k", "5.6k", "1.5k", "390", fitted(1e9, 4.9e-3, 0.7));
    Point ground = Rows.pin("R2.2");
    assertThat(solved.volts(Rows.pin("Q1.b"), ground)).isCloseTo(2.61, within(0.01));
    assertThat(solved.volts(Rows.pin("Q1.c"), ground)).isCloseTo(10.65, within(0.01));
    assertThat(over(solved)).isCloseTo(8.74, within(0.01));
  }

  private static String common(String fields) {
    return "Q1 npn c b e " + fields;
  }

  /** More worked examples, from memory; a share is what the book's rounding or β for β + 1 is. */
  static Stream<Example> rows() {
    return Stream.of(
        Example.of(
            "Boylestad 4.4, emitter resistor",
            "B1 battery v 0 volts=20; R1 resistor v b ohms=430k; R2 resistor v c ohms=2k;"
                + "R3 resistor e 0 ohms=1k;"
                + common(fitted(50, 2.01e-3, 0.7)),
            "I(Q1.b)=40.1u",
            "I(Q1.c)=2.01m",
            "V(c,e)=13.97~0.3%",
            "V(e,0)=2.01~2%"),
        Example.of(
            "Boylestad 4.8, divider",
            "B1 battery v 0 volts=22; R1 resistor v b ohms=39k; R2 resistor b 0 ohms=3.9k;"
                + "R3 resistor v c ohms=10k; R4 resistor e 0 ohms=1.5k;"
                + common(fitted(100, 0.84e-3, 0.7)),
            "I(Q1.b)=8.38u~0.3%",
            "I(Q1.c)=0.84m",
            "V(c,e)=12.34~0.5%"),
        Example.of(
            "Boylestad 4.12, collector feedback",
            "B1 battery v 0 volts=10; R1 resistor c b ohms=250k; R2 resistor v c ohms=4.7k;"
                + "R3 resistor e 0 ohms=1.2k;"
                + common(fitted(90, 1.07e-3, 0.7)),
            "I(Q1.b)=11.91u~1.2%",
            "I(Q1.c)=1.07m",
            "V(c,e)=3.69~1.5%"),
        Example.of(
            "Boylestad 5, Darlington pair of 8000",
            "B1 battery v 0 volts=18; R1 resistor v b ohms=3.3M; R2 resistor e 0 ohms=390;"
                + "Q1 npn v b m "
                + fitted(88.45, 0.229e-3, 0.8)
                + "; Q2 npn v m e "
                + fitted(88.45, 20.48e-3, 0.8),
            "I(Q1.b)=2.56u",
            "I(R2.1)=20.48m~0.5%",
            "V(e,0)=8~0.5%"),
        Example.of(
            "Sedra 5.4, base at 4 V",
            sedra("4") + common(fitted(100, 0.99e-3, 0.7)),
            "I(R3.1)=1.00m",
            "I(Q1.c)=0.99m",
            "V(e,0)=3.30",
            "V(c,0)=5.3~1%"),
        Example.of(
            "Sedra 5.5, base at 6 V, saturated; V_CEsat 0.2 V there, some tens of mV here",
            sedra("6") + common(fitted(100, 0.96e-3, 0.7)),
            "V(e,0)=5.30~1%",
            "I(R3.1)=1.6m~1%",
            "V(c,0)=5.5~5%",
            "I(Q1.c)=0.96m~5%"),
        Example.of(
            "Sedra 5.7, PNP between ±10 V",
            "B1 battery p 0 volts=10; B2 battery 0 m volts=10; R1 resistor p e ohms=2k;"
                + "R2 resistor c m ohms=1k; Q1 pnp c 0 e "
                + fitted(100, 4.6e-3, 0.7),
            "V(e,0)=0.70",
            "I(R1.1)=4.65m",
            "I(R2.1)=4.60m",
            "V(c,0)=-5.4"),
        Example.of(
            "Sedra 5.8, 5 V by 100k",
            "B1 battery v 0 volts=10; B2 battery d 0 volts=5; R1 resistor d b ohms=100k;"
                + "R2 resistor v c ohms=2k; Q1 npn c b 0 "
                + fitted(100, 4.3e-3, 0.7),
            "I(Q1.b)=43u",
            "I(Q1.c)=4.3m",
            "V(c,0)=1.4"),
        Example.of(
            "Sedra 5.10, divider",
            "B1 battery v 0 volts=15; R1 resistor v b ohms=100k; R2 resistor b 0 ohms=50k;"
                + "R3 resistor v c ohms=5k; R4 resistor e 0 ohms=3k;"
                + common(fitted(100, 1.28e-3, 0.7)),
            "I(R4.1)=1.29m",
            "I(Q1.c)=1.28m",
            "V(b,0)=4.57",
            "V(c,0)=8.6"),
        Example.of(
            "Sedra 6, current mirror: I_REF/(1 + 2/β)",
            "B1 battery v 0 volts=5; R1 resistor v b ohms=4.3k; R2 resistor v c ohms=1k;"
                + "Q1 npn b b 0 "
                + fitted(100, 0.9804e-3, 0.7)
                + "; Q2 npn c b 0 "
                + fitted(100, 0.9804e-3, 0.7),
            "I(R1.1)=1.000m",
            "I(Q2.c)=0.980m"),
        Example.of(
            "Horowitz & Hill 2, a saturated switch: 1k to 10 V, lamp of 100 mA",
            "B1 battery v 0 volts=10; R1 resistor v b ohms=1k; R2 resistor v c ohms=100;"
                + "Q1 npn c b 0 "
                + fitted(100, 0.1, 0.6),
            "I(Q1.b)=9.4m~1%",
            "I(Q1.c)=100m~2%",
            "V(c,0)=0.1~100%"),
        Example.of(
            "Horowitz & Hill 2, 60 mV a decade (59.2 mV at 25 °C; calc)",
            "B1 battery v 0 volts=5; R1 resistor v a ohms=10k; R2 resistor v b ohms=10k;"
                + "Q1 npn a a 0 gain=1e6 saturation=1e-14; Q2 npn b b 0 gain=1e6 saturation=1e-13",
            "V(a,b)=59.2m~2%"),
        onAt("2N3904 sheet: V_BE(sat) 0.65 to 0.85 V at 10 mA", "2N3904", "1k", "0.75", "13%"),
        onAt("BC547 sheet: V_BE(on) 0.58 to 0.70 V at 2 mA", "BC547B", "5k", "0.64", "9%"));
  }

  private static String sedra(String base) {
    return "B1 battery v 0 volts=10; B2 battery b 0 volts=%s; R2 resistor v c ohms=4.7k;"
            .formatted(base)
        + "R3 resistor e 0 ohms=3.3k;";
  }

  private static Example onAt(String source, String type, String ohms, String volts, String band) {
    return Example.of(
        source,
        "B1 battery v 0 volts=10.7; R1 resistor v b ohms=%s; Q1 npn b b 0 type=%s"
            .formatted(ohms, type),
        "V(b,0)=%s~%s".formatted(volts, band));
  }

  @ParameterizedTest
  @Published(Family.BIPOLAR)
  @MethodSource("rows")
  void agreesWithTheBook(Example example) {
    example.check();
  }
}
