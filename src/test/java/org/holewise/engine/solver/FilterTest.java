package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
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
        Arguments.of("F3 Boylestad 11.13, high pass", highPass("2.1k", "50n"), 1e6, 1516, 5));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("corners")
  void halfThePowerIsLeftAtTheCorner(
      String row, String circuit, double from, double hertz, double slack) {
    double to = from < hertz ? hertz * 100 : hertz / 100;
    assertThat(Swings.of(circuit).fallsTo(HALF_POWER, "out", "in", from, to))
        .isCloseTo(hertz, within(slack));
  }

  /** F2: Malvino 21-1, 12k and 680 pF with a gain of 1 + 39/1: 19.5 kHz, 40 times, 32 dB. */
  @Test
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
  void aHighQHangsOnItsResistors() {
    Swings swings = Swings.of(sallenKey("56k", "56k", "220p", "220p", gain("39.39k", "19.8k")));
    double f0 = quarterTurn(swings, 12_920);
    assertThat(swings.gain("out", "in", f0) / swings.gain("out", "in", 1)).isBetween(80.0, 110.0);
  }

  /** Closed forms of RLC circuits: series resonance, the corner of RL, what is left of a trap. */
  @Test
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
  }

  /** A gain of a hundred out of an amplifier whose gain is one at 1 MHz ends at 10 kHz (calc). */
  @Test
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
