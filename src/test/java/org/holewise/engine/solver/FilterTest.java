package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Filters. LEC: Kuphaldt, Lessons in Electric Circuits, AC; Boylestad 10e; Malvino and Bates 7e;
 * Franco, Design with Operational Amplifiers 3e. Op-amps are as good as ideal; the books' last
 * digit is met, or a share where the book rounds.
 */
@Tag("fast")
class FilterTest {
  private static final double HALF_POWER = Math.sqrt(0.5);
  private static final String SOURCE = "G1 generator in 0 volts=1 hertz=1k output=0;";

  /** Its inputs hang on no more than a millionth of what the parts carry. */
  private static final String AMPLIFIER =
      "V1 battery top 0 volts=15; V2 battery 0 bottom volts=15;"
          + "U1 dual-opamp out n %s bottom n5 n6 n7 top type=generic gain=1e6;";

  private static String lowPass(String ohms, String farads) {
    return SOURCE
        + "R1 resistor in out ohms=%s; C1 capacitor out 0 farads=%s".formatted(ohms, farads);
  }

  private static String highPass(String ohms, String farads) {
    return SOURCE
        + "C1 capacitor in out farads=%s; R1 resistor out 0 ohms=%s".formatted(farads, ohms);
  }

  /** Sallen and Key, low pass; feedback resistors 0 for a follower. */
  private static String sallenKey(
      String r1, String r2, String feedback, String ground, String gain) {
    return SOURCE
        + AMPLIFIER.formatted("p")
        + "R1 resistor in m ohms=%s; R2 resistor m p ohms=%s;".formatted(r1, r2)
        + "C1 capacitor m out farads=%s; C2 capacitor p 0 farads=%s;".formatted(feedback, ground)
        + gain;
  }

  private static final String FOLLOWER = "S1 switch n out closed=true";

  private static String gain(String rf, String rg) {
    return "R8 resistor out n ohms=%s; R9 resistor n 0 ohms=%s".formatted(rf, rg);
  }

  static Stream<Arguments> corners() {
    return Stream.of(
        Arguments.of("F1 LEC AC 8, RC low pass", lowPass("500", "7u"), 1e-3, 45.473, 1e-3),
        Arguments.of("F3 Boylestad 11.12, low pass", lowPass("1.2k", "20n"), 10, 6630, 5),
        Arguments.of("F3 Boylestad 11.13, high pass", highPass("2.1k", "50n"), 1e6, 1516, 5),
        Arguments.of(
            "LEC AC 8, inductor of 3 H and 1k (calc R/(2πL))",
            SOURCE + "L1 inductor in out henries=3 series=1m; R1 resistor out 0 ohms=1k",
            1e-2,
            53.05,
            0.01));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("corners")
  @Published(Family.FILTER)
  void halfThePowerIsLeftAtTheCorner(
      String row, String circuit, double from, double hertz, double slack) {
    double to = from < hertz ? hertz * 100 : hertz / 100;
    assertThat(Swings.of(circuit).fallsTo(HALF_POWER, "out", "in", from, to))
        .isCloseTo(hertz, within(slack));
  }

  /** F2: Malvino 21-1, 12k and 680 pF with a gain of 1 + 39/1: 19.5 kHz, 40 times, 32 dB. */
  @Test
  @Published(Family.FILTER)
  void aFirstOrderFilterWithGain() {
    Swings swings =
        Swings.of(
            SOURCE
                + AMPLIFIER.formatted("p")
                + "R1 resistor in p ohms=12k; C1 capacitor p 0 farads=680p;"
                + gain("39k", "1k"));
    assertThat(swings.gain("out", "in", 10)).isCloseTo(40, within(0.01));
    assertThat(20 * Math.log10(swings.gain("out", "in", 10))).isCloseTo(32, within(0.05));
    assertThat(swings.fallsTo(HALF_POWER, "out", "in", 10, 1e6)).isCloseTo(19_500, within(50.0));
  }

  /**
   * Second order: at f0 the gain is Q times that at rest. F4 Malvino 21-3, F5 21-5, F6 21-6, F7
   * 21-8; F8 Franco 3.10, F9 3.11.
   */
  static Stream<Arguments> poles() {
    return Stream.of(
        Arguments.of("F4", sallenKey("30k", "30k", "1.64n", "820p", FOLLOWER), 4570, 0.707, 1),
        Arguments.of("F5", sallenKey("22k", "22k", "27n", "390p", FOLLOWER), 2230, 4.16, 1),
        Arguments.of(
            "F6", sallenKey("47k", "47k", "330p", "330p", gain("30k", "51k")), 10_260, 0.71, 1.588),
        Arguments.of(
            "F7", sallenKey("56k", "56k", "220p", "220p", gain("39k", "20k")), 12_920, 20, 2.95),
        Arguments.of("F8", sallenKey("5.758k", "2.199k", "20n", "1n", FOLLOWER), 10_000, 2.0, 1),
        Arguments.of(
            "F9 Butterworth",
            sallenKey("11.25k", "11.25k", "2n", "1n", FOLLOWER),
            10_000,
            0.707,
            1));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("poles")
  @Published(Family.FILTER)
  void atItsFrequencyTheGainIsQ(
      String row, String circuit, double hertz, double quality, double rest) {
    Swings swings = Swings.of(circuit);
    assertThat(swings.gain("out", "in", 1)).isCloseTo(rest, within(5e-3));
    double f0 = quarterTurn(swings, hertz);
    assertThat(f0).isCloseTo(hertz, within(hertz * 3e-3));
    assertThat(swings.gain("out", "in", f0) / swings.gain("out", "in", 1))
        .isCloseTo(quality, within(0.012 * quality));
  }

  /** Where the output is a quarter behind. */
  private static double quarterTurn(Swings swings, double near) {
    double low = near / 3;
    double high = near * 3;
    for (int k = 0; k < 60; k++) {
      double middle = Math.sqrt(low * high);
      double phase =
          swings.volts("out", "0", middle).phase() - swings.volts("in", "0", middle).phase();
      if (phase > -Math.PI / 2) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** F7: with R_f 1 % up and R_3 1 % down Q goes from 20 to about 94: K 2.99 (calc 1/(3 − K)). */
  @Test
  @Published(Family.FILTER)
  void aHighQHangsOnItsResistors() {
    Swings swings = Swings.of(sallenKey("56k", "56k", "220p", "220p", gain("39.39k", "19.8k")));
    double f0 = quarterTurn(swings, 12_920);
    assertThat(swings.gain("out", "in", f0) / swings.gain("out", "in", 1)).isBetween(80.0, 110.0);
  }

  private static String series(String ohms, String henries, String farads) {
    return SOURCE
        + "R1 resistor in a ohms=%s; L1 inductor a b henries=%s series=1m;".formatted(ohms, henries)
        + "C1 capacitor b 0 farads=%s".formatted(farads);
  }

  private static final String COLLEGE = series("40", "3m", "5u");
  private static final String LESSON = series("250", "650m", "1.5u");
  private static final String COIL =
      SOURCE + "R1 resistor in a ohms=5; L1 inductor a 0 henries=10m series=1m";
  private static final String CAPACITOR =
      SOURCE + "R1 resistor in a ohms=5; C1 capacitor a 0 farads=100u";

  /**
   * Impedances: CP, OpenStax College Physics 23.12, with 40.0 Ω, 3.00 mH and 5.00 µF; LEC AC 3, 4
   * and 5 (both from memory); degrees by which the voltage is ahead.
   */
  static Stream<Arguments> impedances() {
    return Stream.of(
        Arguments.of("CP 23.12, 60 Hz", COLLEGE, 40, 60, 531, 0.5, -85.7, 0.05),
        Arguments.of("CP 23.12, 10 kHz", COLLEGE, 40, 10_000, 190, 0.5, 77.8, 0.1),
        Arguments.of("CP 23.12, at resonance, 1.30 kHz", COLLEGE, 40, 1299.5, 40.0, 0.05, 0, 0.1),
        Arguments.of("LEC AC 5, R, L and C", LESSON, 250, 60, 1543.7, 0.05, -80.680, 2e-3),
        Arguments.of("LEC AC 3, R and L", COIL, 5, 60, 6.262, 1e-3, 37.016, 0.01),
        Arguments.of("LEC AC 4, R and C", CAPACITOR, 5, 60, 26.993, 1e-3, -79.325, 1e-3));
  }

  /** The source's voltage over the current through R1. */
  @ParameterizedTest(name = "{0}")
  @Published(Family.FILTER)
  @MethodSource("impedances")
  void impedanceIsTheBooks(
      String row,
      String circuit,
      double ohms,
      double hertz,
      double impedance,
      double slack,
      double degrees,
      double slackOfDegrees) {
    Swings swings = Swings.of(circuit);
    Phasor over = swings.volts("in", "a", hertz);
    Phasor in = swings.volts("in", "0", hertz);
    assertThat(ohms * in.size() / over.size()).isCloseTo(impedance, within(slack));
    assertThat(Math.toDegrees(in.phase() - over.phase()))
        .isCloseTo(degrees, within(slackOfDegrees));
  }

  /**
   * Networks that are known for one frequency: Wien, Boylestad 14.6, 51k and 1 nF, 3120.7 Hz, a
   * third; three sections of RC, 1/(2πRC√6), a twenty-ninth turned round; twin T, Horowitz and Hill
   * 6, 1/(2πRC), nothing (all from memory).
   */
  static Stream<Arguments> networks() {
    String sections =
        "C1 capacitor in a farads=10n; R1 resistor a 0 ohms=10k; C2 capacitor a b farads=10n;"
            + "R2 resistor b 0 ohms=10k; C3 capacitor b out farads=10n; R3 resistor out 0 ohms=10k";
    String wien =
        "R1 resistor in a ohms=51k; C1 capacitor a out farads=1n;"
            + "R2 resistor out 0 ohms=51k; C2 capacitor out 0 farads=1n";
    String twin =
        "R1 resistor in a ohms=10k; R2 resistor a out ohms=10k;"
            + "C1 capacitor a 0 farads=20n;"
            + "C2 capacitor in b farads=10n; C3 capacitor b out farads=10n; R3 resistor b 0 ohms=5k";
    return Stream.of(
        Arguments.of("Wien", wien, 3120.7, 1.0 / 3, 1e-5),
        Arguments.of("three sections", sections, 1591.549 / Math.sqrt(6), 1.0 / 29, 1e-6),
        Arguments.of("twin T", twin, 1591.549, 0, 1e-6));
  }

  @ParameterizedTest(name = "{0}")
  @Published(Family.FILTER)
  @MethodSource("networks")
  void aNetworkPassesItsShare(
      String row, String circuit, double hertz, double share, double slack) {
    assertThat(Swings.of(SOURCE + circuit).gain("out", "in", hertz))
        .isCloseTo(share, within(slack));
  }

  /** Closed forms of RLC circuits: series resonance, the corner of RL, what is left of a trap. */
  @Test
  @Published(Family.FILTER)
  void resonance() {
    Swings swings =
        Swings.of(
            SOURCE
                + "R1 resistor in a ohms=100; L1 inductor a out henries=10m series=1m;"
                + "C1 capacitor out 0 farads=100n");
    double f0 = 1 / (2 * Math.PI * Math.sqrt(10e-3 * 100e-9));
    double quality = Math.sqrt(10e-3 / 100e-9) / (100 + 1e-3);
    assertThat(swings.gain("out", "in", f0)).isCloseTo(quality, within(1e-9));
    for (double hertz : new double[] {100, 1000, 4000, 6000, 50_000}) {
      double omega = 2 * Math.PI * hertz;
      double re = 1 - omega * omega * 10e-3 * 100e-9;
      double im = omega * 100e-9 * (100 + 1e-3);
      assertThat(swings.gain("out", "in", hertz)).isCloseTo(1 / Math.hypot(re, im), within(1e-9));
    }
  }

  /** An integrator and a differentiator: |A| is 1/(ωRC) and ωRC (Kuphaldt, Semiconductors 8). */
  @Test
  @Published(Family.FILTER)
  void integratorAndDifferentiator() {
    Swings integrator =
        Swings.of(
            SOURCE
                + AMPLIFIER.formatted("0")
                + "R1 resistor in n ohms=10k; C1 capacitor n out farads=100n;"
                + "R2 resistor n out ohms=10M");
    double omega = 2 * Math.PI * 1000;
    assertThat(integrator.gain("out", "in", 1000)).isCloseTo(1 / (omega * 1e-3), within(1e-4));
    assertThat(integrator.volts("out", "0", 1000).phase()).isCloseTo(Math.PI / 2, within(1e-2));
    Swings differentiator =
        Swings.of(
            SOURCE
                + AMPLIFIER.formatted("0")
                + "C1 capacitor in n farads=10n; R1 resistor n out ohms=10k");
    assertThat(differentiator.gain("out", "in", 1000)).isCloseTo(omega * 1e-4, within(1e-4));
    assertThat(differentiator.volts("out", "0", 1000).phase())
        .isCloseTo(-Math.PI / 2, within(1e-2));
  }

  /** A gain of a hundred out of an amplifier whose gain is one at 1 MHz ends at 10 kHz (calc). */
  @Test
  @Published(Family.FILTER)
  void bandwidthEndsTheGain() {
    Swings swings =
        Swings.of(
            SOURCE
                + AMPLIFIER.formatted("in").replace("gain=1e6", "gain=1e5 bandwidth=1e6")
                + gain("99k", "1k"));
    assertThat(swings.gain("out", "in", 10)).isCloseTo(100, within(0.15));
    assertThat(swings.fallsTo(HALF_POWER, "out", "in", 10, 1e6)).isCloseTo(10_010, within(30.0));
  }
}
