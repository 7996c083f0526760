package org.holewise.engine.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.holewise.engine.exercise.ExerciseDraft.amps;
import static org.holewise.engine.exercise.ExerciseDraft.volts;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.netlist.Schematic;
import org.holewise.engine.quantity.Parameter;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Bands and verdicts against worked uncertainty budgets and against draws of whole builds. */
@Tag("fast")
class BandsTest {
  private static final Meter HAND = Meters.named("hand-2000").orElseThrow();
  private static final long SEED = 20260117;

  private static Assembly wanted(Exercise exercise) {
    return Assembly.of(exercise, Schematic.netlist(exercise), Assembly.HoleNets.NONE);
  }

  private static ExerciseDraft divider(double spread) {
    return new ExerciseDraft()
        .part("B1", "battery", "volts", 9, "spread", spread)
        .part("R1", "resistor", "ohms", 10e3, "tolerance", 0.05)
        .part("R2", "resistor", "ohms", 10e3, "tolerance", 0.05)
        .net("supply", "B1.+ R1.1")
        .net("middle", "R1.2 R2.1")
        .net("return", "R2.2 B1.-");
  }

  private static Judged judged(Exercise exercise, Map<String, Written> written, String id) {
    Assembly assembly = wanted(exercise);
    return new Judge(exercise, HAND, written)
        .judge(assembly, assembly).stream()
            .filter(j -> j.reading().id().equals(id))
            .findFirst()
            .orElseThrow();
  }

  @Test
  @Published(Family.UNCERTAINTY)
  void aDividerOfFivePercentPartsHasTheBudgetOfTheGuide() {
    // 9 V exact, 10 kΩ / 10 kΩ of 5 %: worst case 4.275 to 4.725 V, standard uncertainty 0.0919 V.
    // With a meter of 0.5 % + 2 digits on 20 V taken as one limit of ±42.5 mV it is 0.0951 V,
    // expanded ±0.190 V (JCGM 100, 4.3.7 and 5.1.2); gain and digits taken apart give a little
    // less.
    Exercise exercise = divider(0).reading("out", volts("R2.1", "R2.2")).exercise();
    Expected out = judged(exercise, Map.of(), "out").wanted().orElseThrow();
    double loaded = 4.5 * 10e6 / (10e6 + 5e3);
    assertThat((out.high() + out.low()) / 2).isCloseTo(loaded, within(1e-6));
    double meter = HAND.limit(Function.VOLTS, 4.5);
    double apart = Math.hypot(0.005 * loaded, 0.02) / Math.sqrt(3);
    double parts = Math.sqrt(Math.pow((out.high() - out.low()) / 4, 2) - apart * apart);
    assertThat(parts).isCloseTo(0.0919, within(1e-4));
    assertThat(Math.hypot(parts, meter / Math.sqrt(3))).isCloseTo(0.0951, within(1e-4));
    assertThat(out.worstLow()).isCloseTo(4.275, within(5e-3));
    assertThat(out.worstHigh()).isCloseTo(4.725, within(5e-3));
  }

  @Test
  void aMeasuredSupplyNarrowsTheBandOfAllThatHangsOnIt() {
    Exercise exercise =
        divider(0.05)
            .reading("supply", volts("B1.+", "B1.-"))
            .reading("out", volts("R2.1", "R2.2"))
            .exercise();
    Expected blind = judged(exercise, Map.of(), "out").wanted().orElseThrow();
    Expected told =
        judged(exercise, Map.of("supply", Written.number(8.1)), "out").wanted().orElseThrow();
    assertThat((told.low() + told.high()) / 2).isCloseTo(4.05, within(0.02));
    assertThat(told.high() - told.low()).isLessThan(0.7 * (blind.high() - blind.low()));
  }

  @Test
  void verdictsFollowBandThenWorstCase() {
    Exercise exercise = divider(0).reading("out", volts("R2.1", "R2.2")).exercise();
    Map<String, Verdict> rows =
        Map.of(
            "4.50 V", Verdict.WITHIN,
            "4.66 V", Verdict.WITHIN,
            "4.73 V", Verdict.UNUSUAL,
            "4.80 V", Verdict.OUTSIDE,
            "OL", Verdict.OVER_RANGE,
            "1,000", Verdict.UNREADABLE,
            "9.9 mA", Verdict.UNREADABLE,
            "", Verdict.MISSING);
    rows.forEach(
        (text, verdict) ->
            assertThat(judged(exercise, Map.of("out", Written.text(text)), "out").verdict())
                .as(text)
                .isEqualTo(verdict));
    assertThat(judged(exercise, Map.of(), "out").verdict()).isEqualTo(Verdict.MISSING);
  }

  @Test
  void aReadingInCoarseStepsWasTakenOnALargerRange() {
    assertThat(HAND.coarser(Function.VOLTS, 0.07, 1e-4)).isZero();
    assertThat(HAND.coarser(Function.VOLTS, 0.07, 0.01)).isCloseTo(0.0198, within(1e-9));
    assertThat(HAND.coarser(Function.VOLTS, 0.07, 1)).isCloseTo(0.0198, within(1e-9));
    assertThat(HAND.coarser(Function.VOLTS, 150, 1)).isZero();
    Exercise exercise =
        new ExerciseDraft()
            .part("B1", "battery", "volts", 9, "spread", 0)
            .part("R1", "resistor", "ohms", 10e3, "tolerance", 0)
            .part("R2", "resistor", "ohms", 82, "tolerance", 0)
            .net("supply", "B1.+ R1.1")
            .net("middle", "R1.2 R2.1")
            .net("return", "R2.2 B1.-")
            .reading("out", volts("R2.1", "R2.2"))
            .exercise();
    for (Object[] row :
        new Object[][] {
          {"73.2 mV", Verdict.WITHIN},
          {"0.07 V", Verdict.WITHIN},
          {"70.0 mV", Verdict.OUTSIDE},
          {"0.12 V", Verdict.OUTSIDE}
        }) {
      assertThat(judged(exercise, Map.of("out", Written.text((String) row[0])), "out").verdict())
          .as("%s", row[0])
          .isEqualTo(row[1]);
    }
  }

  /** A transistor lighting a lamp from a divider: bends, and saturates. */
  private static Exercise amplifier() {
    return new ExerciseDraft()
        .part("B1", "battery", "volts", 9)
        .part("R1", "resistor", "ohms", 22e3)
        .part("R2", "resistor", "ohms", 4.7e3)
        .part("R3", "resistor", "ohms", 2.2e3)
        .part("R4", "resistor", "ohms", 470)
        .part("Q1", "npn")
        .net("supply", "B1.+ R1.1 R3.1")
        .net("base", "R1.2 R2.1 Q1.b")
        .net("collector", "R3.2 Q1.c")
        .net("emitter", "R4.1 Q1.e")
        .net("return", "R2.2 R4.2 B1.-")
        .reading("supply", volts("B1.+", "B1.-"))
        .reading("base", volts("Q1.b", "B1.-"))
        .reading("collector", volts("Q1.c", "B1.-"))
        .reading("emitter", volts("Q1.e", "B1.-"))
        .reading("current", amps("R3.1"))
        .exercise();
  }

  @Test
  void soundBuildsDrawnFromTheSpreadsKeepTheirMarks() {
    Exercise exercise = amplifier();
    var random = new Random(SEED);
    int readings = 0;
    int inside = 0;
    for (int draw = 0; draw < 400; draw++) {
      Map<String, Written> written = SoundDraw.of(exercise, HAND, random);
      var judged = new Judge(exercise, HAND, written).judge(wanted(exercise), wanted(exercise));
      for (Judged one : judged) {
        assertThat(one.verdict().earns())
            .as("%s read %s, expected %s", one.reading().id(), one.measured(), one.asBuilt())
            .isTrue();
        readings++;
        inside += one.verdict() == Verdict.WITHIN ? 1 : 0;
      }
    }
    assertThat(inside / (double) readings).isBetween(0.92, 0.995);
  }

  @Test
  void theFirstParameterOfAPartIsNamedAfterIt() {
    List<Parameter> parameters = Bench.of(wanted(amplifier())).parameters();
    assertThat(parameters).extracting(Parameter::name).contains("B1.volts", "R1.ohms");
    assertThat(amplifier().readings()).extracting(Reading::id).doesNotHaveDuplicates();
  }

  /** Common practice: a gate that nothing drives may take any voltage, and switch or not. */
  @Test
  void whatHangsOnAGateThatNothingDrivesMayBeAnything() {
    Expected undriven = drain(false).wanted().orElseThrow();
    assertThat(undriven.low()).isLessThan(0.2);
    assertThat(undriven.high()).isGreaterThan(4.8);
    assertThat(undriven.worstLow()).isLessThan(0.2);
    assertThat(undriven.worstHigh()).isGreaterThan(4.8);
    Expected driven = drain(true).wanted().orElseThrow();
    assertThat(driven.high()).isLessThan(0.5);
  }

  private static Judged drain(boolean driven) {
    ExerciseDraft draft =
        new ExerciseDraft()
            .part("B1", "battery", "volts", 5)
            .part("R1", "resistor", "ohms", 1e3)
            .part("M1", "nmos", "threshold", 1.5, "k", 0.1)
            .net("supply", driven ? "B1.+ R1.1 M1.g" : "B1.+ R1.1")
            .net("drain", "R1.2 M1.d")
            .net("return", "M1.s B1.-");
    Exercise exercise =
        (driven ? draft : draft.net("gate", "M1.g"))
            .reading("drain", volts("M1.d", "M1.s"))
            .exercise();
    return judged(exercise, Map.of(), "drain");
  }
}
