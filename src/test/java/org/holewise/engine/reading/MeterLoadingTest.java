package org.holewise.engine.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.holewise.engine.exercise.ExerciseDraft.alone;
import static org.holewise.engine.exercise.ExerciseDraft.amps;
import static org.holewise.engine.exercise.ExerciseDraft.joined;
import static org.holewise.engine.exercise.ExerciseDraft.ohms;
import static org.holewise.engine.exercise.ExerciseDraft.seen;
import static org.holewise.engine.exercise.ExerciseDraft.volts;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.netlist.Schematic;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a meter shows, checked against published examples of meters that load what they measure. */
@Tag("fast")
class MeterLoadingTest {
  private static final Meter HAND = Meters.named("hand-2000").orElseThrow();

  private static Forecast read(ExerciseDraft draft, Meter meter, Measure measure) {
    Exercise exercise = draft.exercise();
    Bench bench =
        Bench.of(Assembly.of(exercise, Schematic.netlist(exercise), Assembly.HoleNets.NONE));
    return new Instrument(meter).read(bench, measure, exercise.conditions().get(0)).orElseThrow();
  }

  /** Two resistors across a battery: {@code R1} on top, {@code R2} below. */
  private static ExerciseDraft divider(double volts, double top, double bottom) {
    return new ExerciseDraft()
        .part("B1", "battery", "volts", volts)
        .part("R1", "resistor", "ohms", top)
        .part("R2", "resistor", "ohms", bottom)
        .net("supply", "B1.+ R1.1")
        .net("middle", "R1.2 R2.1")
        .net("return", "R2.2 B1.-");
  }

  /** The hand meter with one range of volts or amps of this resistance. */
  private static Meter with(Function function, double fullScale, double ohms) {
    Map<Function, Meter.Scale> scales = new EnumMap<>(HAND.scales());
    Meter.Scale old = HAND.scale(function);
    scales.put(
        function,
        new Meter.Scale(List.of(new Meter.Range(fullScale, ohms)), old.gain(), old.digits(), 2000));
    return new Meter("test", scales, HAND.ohmsVolts(), HAND.buzzerBelow(), HAND.diodeTest());
  }

  @Test
  @Published(Family.METER)
  void tenMegohmsPullDownADividerOfTwo250Megohms() {
    // Kuphaldt, Lessons in Electric Circuits, DC, chapter 8: 24 V, 250 MΩ + 250 MΩ; 12 V unloaded
    assertThat(read(divider(24, 250e6, 250e6), HAND, volts("R2.1", "R2.2")).value())
        .isCloseTo(0.8889, within(5e-5));
  }

  @Test
  @Published(Family.METER)
  void aVoltmeterOf160KilohmsReads34Point78Volts() {
    // Bird, Electrical Circuit Theory and Technology, 2nd ed., example 10.5: 40 V unloaded
    assertThat(
            read(divider(100, 60e3, 40e3), with(Function.VOLTS, 200, 160e3), volts("R2.1", "R2.2"))
                .value())
        .isCloseTo(34.78, within(5e-3));
  }

  @Test
  @Published(Family.METER)
  void anAmmeterOf50OhmsReads18Point18Milliamps() {
    // Bird, example 10.4: 10 V, 500 Ω; 20 mA without the meter
    assertThat(read(divider(10, 250, 250), with(Function.AMPS, 10, 50), amps("R1.1")).value() * 1e3)
        .isCloseTo(18.18, within(5e-3));
  }

  @Test
  @Published(Family.METER)
  void aVoltmeterOf1KilohmOnACellOfATenthOhmReads1Point5848Volts() {
    // OpenStax, College Physics, measuring a cell's terminal voltage: 1.585 V, 0.1 Ω
    ExerciseDraft cell = new ExerciseDraft().part("B1", "battery", "volts", 1.585, "internal", 0.1);
    assertThat(read(cell, with(Function.VOLTS, 20, 1e3), volts("B1.+", "B1.-")).value())
        .isCloseTo(1.5848, within(5e-5));
  }

  @Test
  @Published(Family.METER)
  void anOhmOfBurdenBeside15KilohmsLeaves0Point7999Milliamps() {
    // Kuphaldt, DC, chapter 8: 12 V, 15 kΩ, a 1 Ω shunt
    assertThat(
            read(divider(12, 7.5e3, 7.5e3), with(Function.AMPS, 10, 1), amps("R2.1")).value() * 1e3)
        .isCloseTo(0.7999, within(5e-5));
  }

  @Test
  @Published(Family.METER)
  void thePocketMeterTwentyKilohmsAVoltReads3Point6Volts() {
    // 100 kΩ / 100 kΩ on 9 V: 10 MΩ 4.48 V, 1 MΩ 4.29 V, 20 kΩ/V on 10 V 3.60 V (calculated)
    for (double[] row : new double[][] {{10e6, 4.48}, {1e6, 4.29}, {200e3, 3.60}}) {
      assertThat(
              read(
                      divider(9, 100e3, 100e3),
                      with(Function.VOLTS, 20, row[0]),
                      volts("R2.1", "R2.2"))
                  .value())
          .isCloseTo(row[1], within(5e-3));
    }
  }

  @Test
  void currentIntoAPinIsPositiveAndItsSignFollowsThePin() {
    ExerciseDraft draft = divider(10, 500, 500);
    assertThat(read(draft, HAND, amps("R1.1")).value()).isPositive();
    assertThat(read(draft, HAND, amps("R1.2")).value()).isNegative();
    assertThat(read(draft, HAND, amps("B1.+")).value()).isNegative();
  }

  @Test
  void ohmsAreTakenWithTheSupplyAway() {
    assertThat(read(divider(9, 1e3, 2.2e3), HAND, ohms("R1.1", "R1.2")).value())
        .isCloseTo(1e3, within(1e-6));
    assertThat(read(divider(9, 1e3, 2.2e3), HAND, ohms("R1.1", "R2.2")).value())
        .isCloseTo(3.2e3, within(1e-6));
  }

  @Test
  void partsBesideAResistorCountUnlessItIsMeasuredAlone() {
    ExerciseDraft draft =
        divider(9, 1e3, 2e3).part("R3", "resistor", "ohms", 2e3).net("spare", "R3.1");
    ExerciseDraft parallel =
        new ExerciseDraft()
            .part("B1", "battery", "volts", 9)
            .part("R1", "resistor", "ohms", 2e3)
            .part("R2", "resistor", "ohms", 2e3)
            .net("supply", "B1.+ R1.1 R2.1")
            .net("return", "B1.- R1.2 R2.2");
    assertThat(read(parallel, HAND, ohms("R1.1", "R1.2")).value()).isCloseTo(1e3, within(1e-6));
    assertThat(read(parallel, HAND, alone("R1.1", "R1.2")).value()).isCloseTo(2e3, within(1e-6));
    assertThat(read(draft, HAND, ohms("R3.1", "R1.1")).shown(HAND))
        .isEqualTo(new Shown.OverRange());
  }

  @Test
  void theOhmmeterDoesNotTurnALampOn() {
    // at most 0.5 V across: far below a lamp's forward voltage (common practice)
    ExerciseDraft lamp =
        new ExerciseDraft()
            .part("B1", "battery", "volts", 9)
            .part("R1", "resistor", "ohms", 470)
            .part("D1", "led", "colour", "red")
            .net("supply", "B1.+ R1.1 D1.a")
            .net("return", "R1.2 D1.k B1.-");
    assertThat(read(lamp, HAND, ohms("R1.1", "R1.2")).value()).isCloseTo(470, within(0.5));
  }

  @Test
  void theBuzzerSoundsBelowFiftyOhms() {
    assertThat(read(divider(9, 49, 1e3), HAND, joined("R1.1", "R1.2")).shown(HAND))
        .isEqualTo(new Shown.Word("yes"));
    assertThat(read(divider(9, 51, 1e3), HAND, joined("R1.1", "R1.2")).shown(HAND))
        .isEqualTo(new Shown.Word("no"));
  }

  @Test
  void aLampIsLitDimOrDarkByItsCurrent() {
    for (Object[] row : new Object[][] {{680.0, "lit"}, {22e3, "dim"}, {1e6, "dark"}}) {
      ExerciseDraft lamp =
          new ExerciseDraft()
              .part("B1", "battery", "volts", 9)
              .part("R1", "resistor", "ohms", row[0])
              .part("D1", "led", "colour", "red")
              .net("supply", "B1.+ R1.1")
              .net("lamp", "R1.2 D1.a")
              .net("return", "D1.k B1.-");
      assertThat(read(lamp, HAND, seen("D1")).shown(HAND))
          .isEqualTo(new Shown.Word((String) row[1]));
    }
  }

  @Test
  void theSmallestRangeThatHoldsTheReadingIsTaken() {
    assertThat(HAND.range(Function.VOLTS, 1.999).fullScale()).isEqualTo(2);
    assertThat(HAND.range(Function.VOLTS, -2).fullScale()).isEqualTo(20);
    assertThat(HAND.digits(Function.VOLTS, 4.5)).isCloseTo(0.02, within(1e-12));
    assertThat(HAND.limit(Function.VOLTS, 4.5)).isCloseTo(0.0425, within(1e-12)); // ±42.5 mV
    assertThat(HAND.overRange(Function.OHMS, 2e6)).isTrue();
  }
}
