package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Clocks that a resistor and a capacitor make, against the formulas of the books. */
@Tag("fast")
class TimersTest {

  private static Bread astable(String family, double ra, double rb, double farads) {
    return new Bread()
        .chip("U1 555 1=0 2=c 3=out 4=5 6=c 7=d 8=5 family=" + family)
        .rows("R1 resistor 5 d ohms=" + ra + "; R2 resistor d c ohms=" + rb)
        .rows("C1 capacitor c 0 farads=" + farads);
  }

  private static double hertz(Bread bread) {
    return LogicSolver.frequency(bread.rows().circuit()).orElseThrow();
  }

  /**
   * f = 1/(ln 2·(RA + 2RB)·C): NE555 (Texas Instruments, SLFS022, astable operation); Kuphaldt,
   * Lessons in Electric Circuits, Digital 10 and Semiconductors 9. The discharge pin's few ohms and
   * the supply's none change it by less than two parts in a hundred here.
   */
  @ParameterizedTest
  @CsvSource({
    "bipolar, 10e3, 100e3, 1e-6, 6.870",
    "bipolar, 1e3, 10e3, 100e-9, 687.0",
    "bipolar, 4.7e3, 47e3, 10e-6, 1.4617",
    "CMOS, 10e3, 68e3, 100e-9, 98.81",
    "CMOS, 22e3, 22e3, 47e-9, 465.1",
    "bipolar, 2.2e3, 220e3, 2.2e-6, 1.4834"
  })
  @Published(Family.LOGIC)
  void anAstableTimerKeepsToItsFormula(
      String family, double ra, double rb, double farads, double hertz) {
    assertThat(hertz(astable(family, ra, rb, farads))).isCloseTo(hertz, within(0.02 * hertz));
  }

  /** Duty of the same: (RA + RB)/(RA + 2RB) of the period high. */
  @Test
  @Published(Family.LOGIC)
  void anAstableTimerIsHighForItsShare() {
    Circuit circuit = astable("CMOS", 10e3, 10e3, 1e-6).rows().circuit();
    Cycle out =
        LogicSolver.cycle(circuit, p -> p.volts(Rows.pin("U1.3")) > 2.5 ? 1 : 0).orElseThrow();
    assertThat(out.mean()).isCloseTo(2.0 / 3, within(0.005));
  }

  /** The frequency does not hang on the supply (NE555): the thresholds are shares of it. */
  @ParameterizedTest
  @CsvSource({"5", "9", "15"})
  @Published(Family.LOGIC)
  void anAstableTimerDoesNotMindItsSupply(double volts) {
    var bread =
        new Bread(volts)
            .chip("U1 555 1=0 2=c 3=out 4=5 6=c 7=d 8=5 family=CMOS")
            .rows(
                "R1 resistor 5 d ohms=10k; R2 resistor d c ohms=100k; C1 capacitor c 0 farads=1e-6");
    assertThat(hertz(bread)).isCloseTo(6.870, within(0.05));
  }

  /**
   * A voltage at control sets the thresholds (NE555): at V, f = 1/((RA+RB)C·ln((VCC−V/2)/(VCC−V)) +
   * RB·C·ln 2).
   */
  @Test
  @Published(Family.LOGIC)
  void aVoltageAtControlChangesTheFrequency() {
    var bread = astable("CMOS", 10e3, 100e3, 1e-6).rows("B2 battery U1.5 0 volts=4");
    double period = 110e3 * 1e-6 * Math.log((5 - 2.0) / (5 - 4.0)) + 100e3 * 1e-6 * Math.log(2);
    assertThat(hertz(bread)).isCloseTo(1 / period, within(0.01 / period));
  }

  /**
   * An inverter with a Schmitt input, a resistor from its output and a capacitor: T = RC·ln(VT+/VT−
   * · (VCC − VT−)/(VCC − VT+)); thresholds of SN74HC14 (SCLS085), typical at 4.5 V: 2.5 and 1.6 V.
   */
  @ParameterizedTest
  @CsvSource({"10e3, 100e-9", "100e3, 1e-6", "47e3, 10e-9"})
  @Published(Family.LOGIC)
  void aSchmittInverterSwingsBetweenItsThresholds(double ohms, double farads) {
    var bread =
        new Bread(4.5)
            .chip("U1 7414 1=c 2=y")
            .rows("R1 resistor y c ohms=" + ohms + "; C1 capacitor c 0 farads=" + farads);
    double hertz = 1 / (ohms * farads * Math.log(2.5 / 1.6 * (4.5 - 1.6) / (4.5 - 2.5)));
    assertThat(hertz(bread)).isCloseTo(hertz, within(0.02 * hertz));
  }

  /** A monostable is at rest, its output low and its capacitor held empty (NE555). */
  @Test
  void aMonostableRests() {
    var bread =
        new Bread()
            .chip("U1 555 1=0 2=t 3=out 4=5 6=c 7=c 8=5")
            .rows(
                "R1 resistor 5 c ohms=100k; C1 capacitor c 0 farads=1e-6; R2 resistor 5 t ohms=10k");
    assertThat(LogicSolver.frequency(bread.rows().circuit())).isEmpty();
    assertThat(Bread.outputs(bread.settled(), "U1")).isEqualTo("LL");
  }

  /**
   * A monostable's pulse is 1.1·R·C (NE555, SLFS022, monostable operation): ln 3, from empty to two
   * thirds of the supply. Here its trigger hangs between supply and capacitor, so that it starts
   * itself anew as soon as the capacitor is down to a fiftieth of the supply: ln(0.98·3).
   */
  @ParameterizedTest
  @Published(Family.LOGIC)
  @CsvSource({"10e3, 1e-6", "100e3, 100e-9", "47e3, 10e-6"})
  void aMonostablesPulseIsElevenTenthsOfItsTimeConstant(double ohms, double farads) {
    double share = (1.0 / 3 - 0.02) / 0.98;
    Bread bread =
        new Bread()
            .chip("U1 555 1=0 2=t 3=out 4=5 6=c 7=c 8=5 family=CMOS")
            .rows("R1 resistor 5 c ohms=" + ohms + "; C1 capacitor c 0 farads=" + farads)
            .rows(
                "R2 resistor t c ohms="
                    + 1e9 * share
                    + "; R3 resistor 5 t ohms="
                    + 1e9 * (1 - share));
    Circuit circuit = bread.rows().circuit();
    Cycle out =
        LogicSolver.cycle(circuit, p -> p.volts(Rows.pin("U1.3")) > 2.5 ? 1 : 0).orElseThrow();
    double pulse = out.mean() / out.hertz();
    assertThat(pulse).isCloseTo(Math.log(0.98 * 3) * ohms * farads, within(0.01 * ohms * farads));
    assertThat(pulse).isCloseTo(1.1 * ohms * farads, within(0.03 * ohms * farads));
  }

  @Test
  void aTimerIsHeldByItsReset() {
    var bread =
        new Bread()
            .chip("U1 555 1=0 2=c 3=out 4=0 6=c 7=d 8=5")
            .rows(
                "R1 resistor 5 d ohms=10k; R2 resistor d c ohms=100k; C1 capacitor c 0 farads=1e-6");
    assertThat(LogicSolver.frequency(bread.rows().circuit())).isEmpty();
    assertThat(Bread.outputs(bread.settled(), "U1")).isEqualTo("LL");
  }

  /** Kuphaldt, Digital 11: each output of a counter halves the frequency of the one before. */
  @ParameterizedTest
  @CsvSource({"U1.3, 1", "U2.3, 2", "U2.4, 4", "U2.5, 8", "U2.6, 16"})
  @Published(Family.LOGIC)
  void aCounterFedByATimerHalvesItsFrequencyAgainAndAgain(String pin, int part) {
    var bread = astable("bipolar", 10e3, 100e3, 1e-6).chip("U2 74393 1=out 2=0 12=5 13=0");
    Circuit circuit = bread.rows().circuit();
    double clock = LogicSolver.frequency(circuit).orElseThrow();
    Cycle cycle = LogicSolver.cycle(circuit, p -> p.volts(Rows.pin(pin))).orElseThrow();
    assertThat(cycle.hertz()).isCloseTo(clock / part, within(1e-9));
    assertThat(clock).isCloseTo(6.87, within(0.07));
  }

  @Test
  void aCounterFedByATimerStandsAfterSoManyOfItsPulses() {
    var bread = astable("bipolar", 10e3, 100e3, 1e-6).chip("U2 74393 1=out 2=0 12=5 13=0");
    Settled after = bread.after(11, "U1.3");
    assertThat(Bread.outputs(after, "U2")).isEqualTo("HHLHLLLL");
    assertThat(after.clock().orElseThrow()).hasToString("U1.3");
  }
}
