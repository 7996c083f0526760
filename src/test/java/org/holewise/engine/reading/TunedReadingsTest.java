package org.holewise.engine.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.netlist.Schematic;
import org.holewise.engine.part.Pin;
import org.holewise.engine.quantity.Parameter;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Readings that are places along the frequencies. Resonance f = 1/(2π√(LC)), Q = √(L/C)/R and
 * corners f·(√(1 + 1/(4Q²)) ± 1/(2Q)) of a series circuit: Kuphaldt, Lessons in Electric Circuits,
 * AC 6. Astable f = 1/(ln 2·(RA + 2RB)·C): NE555, Texas Instruments SLFS022.
 */
@Tag("fast")
class TunedReadingsTest {
  private static final Meter HAND = Meters.named("hand-2000").orElseThrow();
  private static final Instrument INSTRUMENT = new Instrument(HAND);

  private static Measure.Pair pair(String red, String black) {
    return new Measure.Pair(probe(red), probe(black));
  }

  private static Probe probe(String pin) {
    return Probe.at(Pin.read(pin).orElseThrow());
  }

  private static Bench bench(ExerciseDraft draft) {
    Exercise exercise = draft.exercise();
    return Bench.of(Assembly.of(exercise, Schematic.netlist(exercise), Assembly.HoleNets.NONE));
  }

  private static Condition condition(Bench bench) {
    return bench.assembly().exercise().conditions().get(0);
  }

  private static Optional<Forecast> read(Bench bench, Measure measure) {
    return INSTRUMENT.read(bench, measure, condition(bench));
  }

  private static ExerciseDraft lowPass() {
    return new ExerciseDraft()
        .part("G1", "generator", "volts", 1, "hertz", 1000, "output", 0)
        .part("R1", "resistor", "ohms", 1e3)
        .part("C1", "capacitor", "farads", 100e-9)
        .net("in", "G1.+ R1.1")
        .net("out", "R1.2 C1.1")
        .net("ground", "C1.2 G1.-");
  }

  private static final Measure.Pair LOW_PASS_OUT = pair("C1.1", "C1.2");
  private static final Measure.Pair IN = pair("G1.+", "G1.-");

  private static ExerciseDraft series(double ohms) {
    return new ExerciseDraft()
        .part("G1", "generator", "volts", 1, "hertz", 1000, "output", 0)
        .part("L1", "inductor", "henries", 10e-3, "series", 0)
        .part("C1", "capacitor", "farads", 100e-9)
        .part("R1", "resistor", "ohms", ohms)
        .net("in", "G1.+ L1.1")
        .net("m", "L1.2 C1.1")
        .net("out", "C1.2 R1.1")
        .net("ground", "R1.2 G1.-");
  }

  private static final Measure.Pair SERIES_OUT = pair("R1.1", "R1.2");

  /**
   * |H| = 1/√(1 + (f/fc)²), fc = 1/(2πRC): Kuphaldt, Lessons in Electric Circuits, AC 8. The
   * meter's 10 MΩ across the output take less than a thousandth of a decibel.
   */
  @Test
  void theCurveOfALowPassIsThatOfTheBooks() {
    Assembly lowPass = bench(lowPass()).assembly();
    Condition condition = lowPass.exercise().conditions().get(0);
    var corner = new Measure.Corner(LOW_PASS_OUT, IN, true);
    GainCurve curve = GainCurve.of(lowPass, HAND, corner, condition, 1, 5).orElseThrow();
    double fc = 1 / (2 * Math.PI * 1e3 * 100e-9);
    assertThat(curve.points()).hasSize(81);
    assertThat(curve.points().get(0).hertz()).isEqualTo(10, within(1e-9));
    assertThat(curve.points().get(80).hertz()).isEqualTo(1e5, within(1e-6));
    for (GainCurve.Point point : curve.points()) {
      double book = -10 * Math.log10(1 + Math.pow(point.hertz() / fc, 2));
      assertThat(point.decibels()).isEqualTo(book, within(2e-3));
    }
  }

  @Test
  void aCircuitInWhichNothingSwingsHasNoCurve() {
    ExerciseDraft still =
        new ExerciseDraft()
            .part("B1", "battery", "volts", 6)
            .part("R1", "resistor", "ohms", 1e3)
            .net("in", "B1.+ R1.1")
            .net("ground", "R1.2 B1.-");
    Assembly assembly = bench(still).assembly();
    var corner = new Measure.Corner(pair("R1.1", "R1.2"), pair("B1.+", "B1.-"), true);
    Condition condition = assembly.exercise().conditions().get(0);
    assertThat(GainCurve.of(assembly, HAND, corner, condition, 1, 5).orElseThrow().points())
        .isEmpty();
  }

  @Test
  void aLowPassHasOneCornerAndNoResonance() {
    Bench bench = bench(lowPass());
    double corner = 1 / (2 * Math.PI * 1e3 * 100e-9);
    assertThat(read(bench, new Measure.Corner(LOW_PASS_OUT, IN, true)).orElseThrow().value())
        .isCloseTo(corner, within(1e-3 * corner));
    assertThat(read(bench, new Measure.Corner(LOW_PASS_OUT, IN, false))).isEmpty();
    assertThat(read(bench, new Measure.Quality(LOW_PASS_OUT, IN))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"10", "100", "316.22776601683796", "1000"})
  void aSeriesCircuitResonatesByTheBook(double ohms) {
    Bench bench = bench(series(ohms));
    double resonance = 1 / (2 * Math.PI * Math.sqrt(10e-3 * 100e-9));
    double quality = Math.sqrt(10e-3 / 100e-9) / ohms;
    double middle = Math.sqrt(1 + 1 / (4 * quality * quality));
    assertThat(read(bench, new Measure.Resonance(SERIES_OUT, IN)).orElseThrow().value())
        .isCloseTo(resonance, within(1e-3 * resonance));
    assertThat(read(bench, new Measure.Quality(SERIES_OUT, IN)).orElseThrow().value())
        .isCloseTo(quality, within(1e-3 * quality));
    double upper = resonance * (middle + 1 / (2 * quality));
    assertThat(read(bench, new Measure.Corner(SERIES_OUT, IN, true)).orElseThrow().value())
        .isCloseTo(upper, within(1e-3 * upper));
    double lower = resonance * (middle - 1 / (2 * quality));
    assertThat(read(bench, new Measure.Corner(SERIES_OUT, IN, false)).orElseThrow().value())
        .isCloseTo(lower, within(1e-3 * lower));
  }

  @Test
  void theyAnswerToEveryNumberAsDifferencesSay() {
    Bench bench = bench(series(100));
    for (Measure measure :
        List.of(
            new Measure.Corner(SERIES_OUT, IN, true),
            new Measure.Corner(SERIES_OUT, IN, false),
            new Measure.Resonance(SERIES_OUT, IN),
            new Measure.Quality(SERIES_OUT, IN))) {
      assertSlopes(bench, measure, 1e-3);
    }
  }

  /** In deviations: a top is flat, so that its place is found to a root of rounding only. */
  private static final double STEP = 1e-2;

  private static void assertSlopes(Bench bench, Measure measure, double share) {
    Forecast centre = read(bench, measure).orElseThrow();
    List<Parameter> parameters = bench.parameters();
    int answered = 0;
    for (int k = 0; k < parameters.size(); k++) {
      double spread =
          Math.max(parameters.get(k).deviation(), 0.01 * Math.abs(parameters.get(k).nominal()));
      double step = STEP * Math.max(spread, 1e-12);
      double difference =
          (moved(bench, measure, k, step) - moved(bench, measure, k, -step)) / (2 * step);
      double scale = centre.value() / Math.max(Math.abs(parameters.get(k).nominal()), 1e-12);
      assertThat(centre.slopes()[k])
          .as("%s by %s", measure.key(), parameters.get(k).name())
          .isCloseTo(difference, within(share * Math.abs(scale)));
      answered += Math.abs(difference) > 0.1 * Math.abs(scale) ? 1 : 0;
    }
    assertThat(answered).isPositive();
  }

  private static double moved(Bench bench, Measure measure, int k, double by) {
    double[] values = bench.parameters().stream().mapToDouble(Parameter::nominal).toArray();
    values[k] += by;
    return read(bench.with(values), measure).orElseThrow().value();
  }

  /** Common practice: a sharp resonance is found to a hertz, a flat one only roughly. */
  @Test
  void aFlatTopIsFoundLessSurely() {
    Forecast sharp = read(bench(series(30)), new Measure.Resonance(SERIES_OUT, IN)).orElseThrow();
    Forecast flat = read(bench(series(1000)), new Measure.Resonance(SERIES_OUT, IN)).orElseThrow();
    assertThat(flat.own()).isGreaterThan(10 * sharp.own());
    assertThat(sharp.own()).isPositive().isLessThan(0.05 * sharp.value());
  }

  private static ExerciseDraft astable(String more, String ground) {
    return new ExerciseDraft()
        .part("B1", "battery", "volts", 5)
        .part("U1", "555", "family", "CMOS")
        .part("R1", "resistor", "ohms", 10e3)
        .part("R2", "resistor", "ohms", 68e3)
        .part("C1", "capacitor", "farads", 100e-9)
        .net("supply", ("B1.+ U1.8 U1.4 R1.1 " + more).strip())
        .net("fall", "R1.2 U1.7 R2.1")
        .net("ramp", "R2.2 U1.6 U1.2 C1.1")
        .net("ground", ("C1.2 U1.1 B1.- " + ground).strip());
  }

  @Test
  void aTimerIsCountedByItsFormulaAndAnswersToItsParts() {
    Bench bench = bench(astable("", ""));
    double hertz = 1 / (Math.log(2) * (10e3 + 2 * 68e3) * 100e-9);
    Measure out = new Measure.Frequency(Pin.read("U1.3").orElseThrow());
    assertThat(read(bench, out).orElseThrow().value()).isCloseTo(hertz, within(0.02 * hertz));
    assertSlopes(bench, out, 0.02);
    assertThat(slope(bench, out, "C1")).isCloseTo(-1, within(0.01));
    assertThat(slope(bench, out, "R2")).isCloseTo(-136.0 / 146, within(0.02));
  }

  /** Slope of the logarithm by that of a part's first number. */
  private static double slope(Bench bench, Measure measure, String ref) {
    Forecast forecast = read(bench, measure).orElseThrow();
    for (int k = 0; k < bench.parameters().size(); k++) {
      Parameter parameter = bench.parameters().get(k);
      if (parameter.name().startsWith(ref)) {
        return forecast.slopes()[k] * parameter.nominal() / forecast.value();
      }
    }
    throw new AssertionError("no number of " + ref);
  }

  /** Each output of a ripple counter halves the frequency of the one before (74HC393). */
  @ParameterizedTest
  @CsvSource({"3, 2", "4, 4", "5, 8", "6, 16"})
  void aCounterDividesItsClock(String output, double by) {
    Bench bench =
        bench(
            astable("U2.14", "U2.2 U2.7")
                .part("U2", "74393", "family", "HC")
                .net("clock", "U1.3 U2.1"));
    double clock = read(bench, frequency("U1.3")).orElseThrow().value();
    assertThat(read(bench, frequency("U2." + output)).orElseThrow().value())
        .isCloseTo(clock / by, within(1e-6 * clock));
  }

  private static Measure frequency(String pin) {
    return new Measure.Frequency(Pin.read(pin).orElseThrow());
  }

  @Test
  void aTimerThatIsHeldResetIsNotCounted() {
    Bench bench =
        bench(
            new ExerciseDraft()
                .part("B1", "battery", "volts", 5)
                .part("U1", "555", "family", "CMOS")
                .part("R1", "resistor", "ohms", 10e3)
                .part("R2", "resistor", "ohms", 68e3)
                .part("C1", "capacitor", "farads", 100e-9)
                .net("supply", "B1.+ U1.8 R1.1")
                .net("fall", "R1.2 U1.7 R2.1")
                .net("ramp", "R2.2 U1.6 U1.2 C1.1")
                .net("ground", "C1.2 U1.1 U1.4 B1.-"));
    assertThat(read(bench, frequency("U1.3")).orElseThrow().value()).isZero();
  }
}
