package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.holewise.engine.part.Part;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The small signal against differences of operating points, and against books. */
@Tag("fast")
class SmallSignalTest {
  private static final double SHARE = 1e-4;

  /** How many circuits are drawn; more where the property says so. */
  private static final int DRAWS = Integer.getInteger("holewise.swing.draws", 60);

  /** Move of the offset: far above rounding, far below a thermal voltage (V). */
  private static final double STEP = 1e-5;

  /** Less than this is rounding of volts (V). */
  private static final double ROUNDING = 1e-9;

  private static final String STAGE =
      "G1 generator in 0 volts=1m hertz=1k output=0 offset=%s;"
          + "B1 battery v 0 volts=%s; R1 resistor v b ohms=%s; R2 resistor b 0 ohms=%s;"
          + "R3 resistor v c ohms=%s; R4 resistor e 0 ohms=%s; Q1 npn c b e %s;";

  /** What is slow beside a kilohertz, so that nothing of it is lost there. */
  private static final String COUPLED = "C1 capacitor in b farads=0.1; C2 capacitor e 0 farads=1;";

  private static String fitted(double gain, double amps) {
    double thermal = 1.380649e-23 * 298.15 / 1.602176634e-19;
    return "gain=%s saturation=%s".formatted(gain, amps / Math.expm1(0.7 / thermal));
  }

  /**
   * B16: Malvino 10-1, with r_e' of 25 mV over 1.1 mA, load 10k: about −117; V_T is 25.69 mV here,
   * which takes 2.7 % off.
   */
  @Test
  @Published(Family.BIPOLAR)
  void malvinosCommonEmitter() {
    Swings swings =
        Swings.of(
            STAGE.formatted("0", "10", "10k", "2.2k", "3.6k", "1k", fitted(1e9, 1.103e-3))
                + COUPLED
                + "C3 capacitor c out farads=1; R5 resistor out 0 ohms=10k");
    Phasor out = swings.volts("out", "0", 1000);
    Phasor in = swings.volts("in", "0", 1000);
    assertThat(out.size() / in.size()).isCloseTo(117 * 25 / 25.69, within(1.5));
    assertThat(Math.abs(out.phase())).isCloseTo(Math.PI, within(1e-2));
  }

  /**
   * B17: Boylestad 5.2: r_e 18.4 with 26 mV, A_v −368; here with V_T 25.69 mV, and as in the book
   * without base current, which would take 5 % off.
   */
  @Test
  @Published(Family.BIPOLAR)
  void boylestadsBypassedStage() {
    Swings swings =
        Swings.of(
            STAGE.formatted("0", "22", "56k", "8.2k", "6.8k", "1.5k", fitted(1e9, 1.41e-3))
                + COUPLED);
    double gain = swings.gain("c", "in", 1000);
    double amps = -swings.point().current(Rows.lead("Q1.e"));
    assertThat(gain).isCloseTo(368 * 26 / 25.69, within(368 * 0.03));
    assertThat(amps).isCloseTo(1.41e-3, within(0.03e-3));
  }

  /** B18: Boylestad 5.3, RE unbypassed: A_v −3.89, Z_i 59.34k; the book takes β for β + 1. */
  @Test
  @Published(Family.BIPOLAR)
  void boylestadsUnbypassedStage() {
    String stage =
        "G1 generator g 0 volts=1m hertz=1k output=10k; B1 battery v 0 volts=20;"
            + "C1 capacitor g b farads=0.1; R1 resistor v b ohms=470k; R3 resistor v c ohms=2.2k;"
            + "R4 resistor e 0 ohms=560; Q1 npn c b e "
            + fitted(120, 4.3e-3);
    Swings swings = Swings.of(stage);
    double in = swings.volts("g", "0", 1000).size();
    assertThat(swings.gain("c", "g", 1000)).isCloseTo(3.89, within(3.89 / 100));
    assertThat(10e3 * in / (1e-3 - in)).isCloseTo(59_340, within(59_340 / 120.0));
  }

  /**
   * Sedra 3.6 (from memory): 1 V of ripple on 10 V behind 10k leaves 5.35 mV on a diode of n 2 at
   * 0.93 mA; V_T 25 mV there, 25.69 mV here.
   */
  @Test
  @Published(Family.DIODE)
  void sedrasRipple() {
    Swings swings =
        Swings.of(
            "G1 generator in 0 volts=1 hertz=60 output=0 offset=10; R1 resistor in d ohms=10k;"
                + "D1 diode d 0 forward.volts=0.7 forward.amps=0.93m ideality=2 series=0");
    assertThat(swings.gain("d", "in", 60) * 1e3).isCloseTo(5.35 * 25.69 / 25, within(0.05));
  }

  /**
   * Sedra 4.10 (from memory): V_t 1.5 V, k'W/L 0.25 mA/V², R_D, R_L 10k, R_G 10M, 15 V: 1.06 mA,
   * V_D 4.4 V, gain −3.3, R_in 2.33M. The book's bias is without r_o, which here is a resistor of
   * 47k for what swings alone.
   */
  @Test
  @Published(Family.MOSFET)
  void sedrasCommonSource() {
    Swings swings =
        Swings.of(
            "B1 battery v 0 volts=15; G1 generator s 0 volts=1m hertz=1k output=1M;"
                + "C1 capacitor s g farads=0.1; R1 resistor d g ohms=10M; R2 resistor v d ohms=10k;"
                + "M1 nmos d g 0 threshold=1.5 k=0.125m; C2 capacitor d out farads=0.1;"
                + "R3 resistor out 0 ohms=10k; R4 resistor out 0 ohms=47k");
    assertThat(swings.point().current(Rows.lead("M1.d"))).isCloseTo(1.06e-3, within(5e-6));
    assertThat(swings.point().volts(Rows.pin("M1.d"), Rows.pin("M1.s")))
        .isCloseTo(4.4, within(0.05));
    assertThat(swings.gain("out", "g", 1000)).isCloseTo(3.3, within(0.05));
    double in = swings.volts("g", "0", 1000).size();
    assertThat(1e6 * in / (1e-3 - in)).isCloseTo(2.33e6, within(0.02e6));
  }

  /** Without capacitors the small signal is the slope of the operating point by the offset. */
  @Test
  void agreesWithDifferencesOfOperatingPoints() {
    int compared = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      Rows rows = RandomCircuits.swinging(draw);
      if (!(OperatingPointSolver.solve(rows.circuit()) instanceof OperatingPoint point)) {
        continue;
      }
      var tone = point.tones(OptionalDouble.of(1e-3)).get(0);
      for (int net = 0; net < rows.netlist().nets().size(); net++) {
        Point at = new Point.AtNet(net);
        var swing = point.swing(at, point.circuit().reference(), tone, true);
        double above = difference(rows, point, at, 0, STEP);
        double below = difference(rows, point, at, -STEP, 0);
        double slope = (above + below) / 2;
        boolean smooth = Math.abs(above - below) < SHARE * Math.abs(slope);
        if (swing.isPresent() && smooth && Math.abs(slope) > 1e-4) {
          assertThat(swing.get().re())
              .as("%s %s", draw, net)
              .isCloseTo(slope, within(SHARE * Math.abs(slope)));
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(100);
  }

  /** Slope of a voltage by the generator's offset, between two moves of it. */
  private static double difference(
      Rows rows, OperatingPoint start, Point at, double from, double to) {
    return (moved(rows, start, at, to) - moved(rows, start, at, from)) / (to - from);
  }

  private static double moved(Rows rows, OperatingPoint start, Point at, double by) {
    Part generator = rows.parts().get(0);
    Part moved = generator.with("offset", generator.number("offset") + by);
    Circuit circuit = rows.circuit().with(List.of(new Edit.Instead(moved)));
    return OperatingPointSolver.solve(circuit, start) instanceof OperatingPoint point
        ? point.volts(at)
        : Double.NaN;
  }

  /** What is found by turning a generator is what is found with the generator set. */
  @Test
  void turningAgreesWithSetting() {
    int compared = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      Rows rows = RandomCircuits.storing(draw);
      if (!(OperatingPointSolver.solve(rows.circuit()) instanceof OperatingPoint point)) {
        continue;
      }
      for (int net = 0; net < rows.netlist().nets().size(); net++) {
        Point at = new Point.AtNet(net);
        for (Transfer transfer : point.transfers(at, point.circuit().reference())) {
          for (double hertz : List.of(0.1, 20.0, 3e3, 4e5, 1e8)) {
            var tone = new SmallSignal.Tone(hertz, transfer.wave());
            double set = point.swing(at, point.circuit().reference(), tone, true).get().size();
            assertThat(transfer.peak(hertz))
                .as("%d %d %s", draw, net, hertz)
                .isCloseTo(set, within(SHARE * set + ROUNDING));
            compared += set > ROUNDING ? 1 : 0;
          }
        }
      }
    }
    assertThat(compared).isGreaterThan(DRAWS);
  }

  /** A lamp that blocks holds a net by 1e-18 S; what divides the swing there are capacitances. */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 1, 1000, 1e6, 1e8})
  void capacitancesDivideWhatHangsOnBlockedParts(double hertz) {
    Swings swings =
        Swings.of(
            "G1 generator in 0 volts=1 hertz=1k output=0; C1 capacitor in m farads=1u;"
                + "C2 capacitor m 0 farads=3u; D1 led m 0 colour=blue; D2 led 0 m colour=blue");
    assertThat(swings.volts("m", "0", hertz).size()).isCloseTo(0.25, within(1e-9));
    Transfer turned = swings.point().transfers(swings.rows().at("m"), swings.rows().at("0")).get(0);
    assertThat(turned.peak(hertz)).isCloseTo(0.25, within(1e-9));
  }

  /** Slopes by every parameter, those that move the operating point included. */
  @Test
  void slopesAreThoseOfTheSize() {
    Swings swings =
        Swings.of(
            STAGE.formatted("0", "12", "47k", "10k", "3.3k", "680", "gain=150")
                + "C1 capacitor in b farads=100n; C2 capacitor e x farads=1u;"
                + "R5 resistor x 0 ohms=47;"
                + "R6 resistor c out ohms=1k; C3 capacitor out 0 farads=22n; D1 diode e 0");
    Circuit circuit = swings.point().circuit();
    double[] slopes = swings.volts("out", "0", 1000).slopes();
    int moved = 0;
    for (int k = 0; k < slopes.length; k++) {
      double nominal = circuit.parameters().get(k).nominal();
      double h = 1e-4 * (nominal == 0 ? 0.01 : Math.abs(nominal));
      double by = (size(swings, circuit, k, h) - size(swings, circuit, k, -h)) / (2 * h);
      assertThat(slopes[k])
          .as(circuit.parameters().get(k).name())
          .isCloseTo(by, within(1e-3 * Math.abs(by) + 1e-12));
      moved += Math.abs(by) > 1e-12 ? 1 : 0;
    }
    assertThat(moved).isGreaterThan(10);
  }

  private static double size(Swings swings, Circuit circuit, int k, double by) {
    double[] values =
        circuit.parameters().stream().mapToDouble(parameter -> parameter.nominal()).toArray();
    values[k] += by;
    OperatingPoint point = Rows.solved(circuit.at(values));
    var tone = point.tones(OptionalDouble.of(1000)).get(0);
    return point
        .swing(swings.rows().at("out"), swings.rows().at("0"), tone, true)
        .orElseThrow()
        .size();
  }
}
