package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

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
  void malvinosLoop() {
    OperatingPoint solved =
        solved(
            "B1 battery s 0 volts=10; R1 resistor s d ohms=1k; D1 diode d 0 "
                + through(0.7, 9.3e-3));
    assertThat(into(solved, "D1")).isCloseTo(9.3e-3, within(1e-8));
  }

  /** N8: Boylestad 10e, 2.7. */
  @Test
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
  void boylestadsSeriesResistor() {
    OperatingPoint solved =
        solved("B1 battery s 0 volts=8; R1 resistor s d ohms=300; D1 led d 0 " + through(2, 0.02));
    assertThat(into(solved, "D1")).isCloseTo(20e-3, within(1e-6));
  }

  /** N15: Malvino 5-3. */
  @Test
  void aZenerHoldsTenVolts() {
    OperatingPoint solved =
        solved(
            "B1 battery s 0 volts=18; R1 resistor s z ohms=270; R2 resistor z 0 ohms=1k;"
                + "D1 zener 0 z breakdown.volts=10 breakdown.amps=19.63m");
    assertThat(-into(solved, "D1")).isCloseTo(19.63e-3, within(1e-5));
  }

  /** N16: Boylestad 2.26: off below its voltage, on above. */
  @Test
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
