package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Diodes, lamps and zeners in loops, as books print them. Where a book takes a fixed drop, the
 * curve goes through that drop at the row's current.
 */
@Tag("fast")
class DiodeLoopTest {
  private static final double BOLTZMANN_BY_CHARGE = 1.380649e-23 / 1.602176634e-19;

  private static OperatingPoint solved(String rows) {
    return Rows.solved(rows);
  }

  private static double across(OperatingPoint point, String ref) {
    return point.volts(Rows.pin(ref + ".a"), Rows.pin(ref + ".k"));
  }

  private static double into(OperatingPoint point, String ref) {
    return point.current(Rows.lead(ref + ".a"));
  }

  /** Fields of a curve through so many volts at so many amperes, without resistance. */
  private static String through(double volts, double amps) {
    return "forward.volts=%.17g forward.amps=%.17g series=0"
        .formatted(volts, amps)
        .replace(',', '.');
  }

  /** N1: Neamen 2e, 1.6; I_S 1e-13 A, V_T 26 mV, n 1; exact by W. */
  @Test
  @Published(Family.DIODE)
  void neamensLoop() {
    double celsius = 0.026 / BOLTZMANN_BY_CHARGE - 273.15;
    String point = through(0.026 * Math.log1p(1e-3 / 1e-13), 1e-3);
    Rows rows =
        Rows.of(
            "B1 battery s 0 volts=5; R1 resistor s d ohms=2k; D1 diode d 0 ideality=1 " + point);
    OperatingPoint solved = Rows.solved(Circuit.of(rows.parts(), rows.netlist(), celsius));
    assertThat(across(solved, "D1")).isCloseTo(0.61906, within(1e-5));
    assertThat(into(solved, "D1")).isCloseTo(2.19047e-3, within(1e-8));
    assertThat(into(solved, "D1"))
        .isCloseTo(Lambert.loop(5, 2000, 0.026, 1e-13), within(1e-9 * 2.19e-3));
  }

  /** N2: Sedra and Smith 5e, 3.4; 0.7 V at 1 mA, 0.1 V a decade; exact by W. */
  @Test
  @Published(Family.DIODE)
  void sedrasLoop() {
    double thermal = BOLTZMANN_BY_CHARGE * 298.15;
    double ideality = 0.1 / Math.log(10) / thermal;
    OperatingPoint solved =
        solved(
            "B1 battery s 0 volts=5; R1 resistor s d ohms=1k; D1 diode d 0 ideality=%.17g %s"
                .formatted(ideality, through(0.7, 1e-3)));
    assertThat(into(solved, "D1")).isCloseTo(4.237e-3, within(1e-6));
    assertThat(across(solved, "D1")).isCloseTo(0.7627, within(1e-4));
  }

  /** N6: Malvino 3-5. */
  @Test
  @Published(Family.DIODE)
  void malvinosLoop() {
    OperatingPoint solved =
        solved(
            "B1 battery s 0 volts=10; R1 resistor s d ohms=1k; D1 diode d 0 "
                + through(0.7, 9.3e-3));
    assertThat(into(solved, "D1")).isCloseTo(9.3e-3, within(1e-8));
  }

  /** N8: Boylestad 10e, 2.7. */
  @Test
  @Published(Family.DIODE)
  void aDiodeAndALampInARow() {
    double amps = (12 - 2.5) / 680;
    Rows rows =
        Rows.of(
            "B1 battery s 0 volts=12; D1 diode s m "
                + through(0.7, amps)
                + "; D2 led m o colour=red "
                + through(1.8, amps)
                + "; R1 resistor o 0 ohms=680");
    OperatingPoint solved = Rows.solved(rows.circuit());
    assertThat(into(solved, "D2")).isCloseTo(13.97e-3, within(1e-5));
    assertThat(solved.volts(rows.at("o"), rows.at("0"))).isCloseTo(9.5, within(0.05));
  }

  /** N9: Boylestad 2.4 and 2.5. */
  @Test
  @Published(Family.DIODE)
  void aDiodeReversedTakesItAll() {
    double amps = 7.3 / 2200;
    String forward =
        "B1 battery s 0 volts=8; R1 resistor s d ohms=2.2k; D1 diode d 0 " + through(0.7, amps);
    assertThat(into(solved(forward), "D1")).isCloseTo(3.32e-3, within(1e-5));
    OperatingPoint reversed = solved(forward.replace("D1 diode d 0", "D1 diode 0 d"));
    assertThat(into(reversed, "D1")).isCloseTo(0, within(1e-8));
    assertThat(across(reversed, "D1")).isCloseTo(-8, within(1e-4));
  }

  /** N10: Boylestad 2.9. */
  @Test
  @Published(Family.DIODE)
  void aDiodeBetweenTwoSupplies() {
    double amps = (15 - 0.7) / 6900;
    Rows rows =
        Rows.of(
            "B1 battery s 0 volts=10; B2 battery 0 m volts=5; R1 resistor s a ohms=4.7k;"
                + "D1 diode a o "
                + through(0.7, amps)
                + "; R2 resistor o m ohms=2.2k");
    OperatingPoint solved = Rows.solved(rows.circuit());
    assertThat(into(solved, "D1")).isCloseTo(2.07e-3, within(1e-5));
    assertThat(solved.volts(rows.at("o"), rows.at("0"))).isCloseTo(-0.44, within(0.01));
  }

  /** N12: Kuphaldt, Semiconductors 3: 220 Ω and 88 mW from 6 V, 1.12 kΩ and 448 mW from 24 V. */
  @Test
  @Published(Family.DIODE)
  void kuphaldtsSeriesResistors() {
    String circuit = "B1 battery s 0 volts=%s; R1 resistor s d ohms=%s; D1 led d 0 ";
    OperatingPoint six = solved(circuit.formatted("6", "220") + through(1.6, 0.02));
    assertThat(into(six, "D1")).isCloseTo(20e-3, within(1e-6));
    assertThat(six.power("R1")).isCloseTo(88e-3, within(1e-4));
    OperatingPoint more = solved(circuit.formatted("24", "1.12k") + through(1.6, 0.02));
    assertThat(into(more, "D1")).isCloseTo(20e-3, within(1e-6));
    assertThat(more.power("R1")).isCloseTo(448e-3, within(1e-3));
  }

  /** N14: Boylestad 2.11. */
  @Test
  @Published(Family.DIODE)
  void boylestadsSeriesResistor() {
    OperatingPoint solved =
        solved("B1 battery s 0 volts=8; R1 resistor s d ohms=300; D1 led d 0 " + through(2, 0.02));
    assertThat(into(solved, "D1")).isCloseTo(20e-3, within(1e-6));
  }

  /** N15: Malvino 5-3. */
  @Test
  @Published(Family.DIODE)
  void aZenerHoldsTenVolts() {
    OperatingPoint solved =
        solved(
            "B1 battery s 0 volts=18; R1 resistor s z ohms=270; R2 resistor z 0 ohms=1k;"
                + "D1 zener 0 z breakdown.volts=10 breakdown.amps=19.63m");
    assertThat(-into(solved, "D1")).isCloseTo(19.63e-3, within(1e-5));
  }

  /** N16: Boylestad 2.26: off below its voltage, on above. */
  @Test
  @Published(Family.DIODE)
  void aZenerIsOffBelowItsVoltage() {
    String circuit =
        "B1 battery s 0 volts=16; R1 resistor s z ohms=1k; R2 resistor z 0 ohms=%s;"
            + "D1 zener 0 z breakdown.volts=10 breakdown.amps=2.67m";
    OperatingPoint off = solved(circuit.formatted("1.2k"));
    assertThat(-across(off, "D1")).isCloseTo(8.73, within(0.01));
    assertThat(-into(off, "D1")).isCloseTo(0, within(1e-8));
    OperatingPoint on = solved(circuit.formatted("3k"));
    assertThat(-across(on, "D1")).isCloseTo(10, within(0.01));
    assertThat(-into(on, "D1")).isCloseTo(2.67e-3, within(1e-5));
  }

  private static String zener(double volts, double amps) {
    return "breakdown.volts=%.17g breakdown.amps=%.17g".formatted(volts, amps).replace(',', '.');
  }

  /** More of the books' loops, from memory where no other source is named. */
  static Stream<Example> rows() {
    return Stream.of(
        Example.of(
            "Boylestad 2.6, half a volt turns nothing on",
            "B1 battery s 0 volts=0.5; R1 resistor s d ohms=1.2k; D1 diode d 0 ideality=1 "
                + through(0.7, 1e-3),
            "V(d,0)=0.500~0.5%"),
        Example.of(
            "Boylestad 2.10, two in parallel",
            "B1 battery s 0 volts=10; R1 resistor s d ohms=330; D1 diode d 0 "
                + through(0.7, 14.09e-3)
                + "; D2 diode d 0 "
                + through(0.7, 14.09e-3),
            "I(R1.1)=28.18m",
            "I(D1.a)=14.09m"),
        Example.of(
            "Boylestad 2.13, a resistor across the second of two",
            "B1 battery s 0 volts=20; D1 diode s a "
                + through(0.7, 3.32e-3)
                + "; D2 diode a b "
                + through(0.7, 3.11e-3)
                + "; R1 resistor a b ohms=3.3k; R2 resistor b 0 ohms=5.6k",
            "I(R1.1)=0.212m",
            "I(R2.1)=3.32m",
            "I(D2.a)=3.11m"),
        Example.of(
            "Boylestad 2.14, OR gate",
            "B1 battery s 0 volts=10; D1 diode s o "
                + through(0.7, 9.3e-3)
                + "; D2 diode 0 o; R1 resistor o 0 ohms=1k",
            "V(o,0)=9.3",
            "I(R1.1)=9.3m"),
        Example.of(
            "Boylestad 2.15, AND gate",
            "B1 battery s 0 volts=10; D1 diode o s; D2 diode o 0 "
                + through(0.7, 9.3e-3)
                + "; R1 resistor s o ohms=1k",
            "V(o,0)=0.7",
            "I(R1.1)=9.3m"),
        Example.of(
            "Sedra 3.6, r_d of two n·V_T; V_T 25 mV there, 25.69 mV here",
            "B1 battery s 0 volts=10; R1 resistor s d ohms=10k; D1 diode d 0 ideality=2 "
                + through(0.7, 0.93e-3),
            "I(R1.1)=0.93m",
            "Rth(d,0)=53.8~4%"),
        Example.of(
            "Sedra 3.8, zener of 6.8 V at 5 mA, 20 ohms",
            "B1 battery s 0 volts=10; R1 resistor s z ohms=500;"
                + "D1 zener 0 z breakdown.ohms=20 ideality=0.5 "
                + zener(6.8, 5e-3),
            "V(z,0)=6.83",
            "I(R1.1)=6.35m"),
        regulator("Malvino 5-1, at 20 V", 20, 820, 10, 12.2e-3, "I(R1.1)=12.2m"),
        regulator("Malvino 5-1, at 40 V", 40, 820, 10, 36.6e-3, "I(R1.1)=36.6m"),
        regulator(
            "LEC SEMI 3, 12.6 V without load",
            45,
            1000,
            12.6,
            32.4e-3,
            "I(R1.1)=32.4m",
            "P(D1)=408.24m",
            "P(R1)=1.0498"),
        Example.of(
            "LEC SEMI 3, 12.6 V with a load of 500 ohms",
            "B1 battery s 0 volts=45; R1 resistor s z ohms=1k; R2 resistor z 0 ohms=500;"
                + "D1 zener 0 z "
                + zener(12.6, 7.2e-3),
            "I(R2.1)=25.2m",
            "I(D1.k)=7.2m"),
        Example.of(
            "LEC SEMI 3, 12.6 V starved by 100k",
            "B1 battery s 0 volts=45; R1 resistor s z ohms=100k; R2 resistor z 0 ohms=500;"
                + "D1 zener 0 z "
                + zener(12.6, 7.2e-3),
            "V(z,0)=224m"),
        Example.of(
            "1N4148, typically 0.72 V at 10 mA",
            "B1 battery s 0 volts=10.72; R1 resistor s d ohms=1k; D1 diode d 0 type=1N4148",
            "V(d,0)=0.72"),
        Example.of(
            "1N4001 sheet: at most 1.1 V at 1 A; 0.75 to 1.1 V",
            "B1 battery s 0 volts=11; R1 resistor s d ohms=10; D1 diode d 0 type=1N4001",
            "V(d,0)=0.925~19%"));
  }

  private static Example regulator(
      String source, double volts, double ohms, double zener, double amps, String... expected) {
    return Example.of(
        source,
        "B1 battery s 0 volts=%s; R1 resistor s z ohms=%s; D1 zener 0 z %s"
            .formatted(volts, ohms, zener(zener, amps)),
        expected);
  }

  @ParameterizedTest
  @Published(Family.DIODE)
  @MethodSource("rows")
  void agreesWithTheBook(Example example) {
    example.check();
  }

  /** A lamp's series resistance adds to the loop's: a closed form by Lambert's W. */
  @Test
  void lampLoopsAgreeWithLambert() {
    var random = new Random(20);
    double a = 2 * BOLTZMANN_BY_CHARGE * 298.15;
    for (int draw = 0; draw < 2000; draw++) {
      double volts = 0.2 + 24 * random.nextDouble();
      double ohms = Math.exp(random.nextDouble() * Math.log(1e6));
      double forward = 1.5 + 2 * random.nextDouble();
      double saturation = 0.02 / Math.expm1((forward - 0.06) / a);
      double exact = Lambert.loop(volts, ohms + 3, a, saturation);
      OperatingPoint solved =
          solved(
              String.format(
                  Locale.ROOT,
                  "B1 battery s 0 volts=%.17g; R1 resistor s d ohms=%.17g;"
                      + "D1 led d 0 forward.volts=%.17g",
                  volts,
                  ohms,
                  forward));
      assertThat(into(solved, "D1")).isCloseTo(exact, within(1e-9 * exact));
    }
  }
}
