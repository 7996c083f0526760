package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a meter does to a circuit, and what faults do to readings, as books print them. */
@Tag("fast")
class MeterLoadingTest {

  private static OperatingPoint with(Rows rows, Edit... edits) {
    return Rows.solved(rows.circuit().with(List.of(edits)));
  }

  /** M1: Kuphaldt, Lessons in Electric Circuits, DC 8. */
  @Test
  @Published(Family.METER)
  void aVoltmeterOfTenMegohmsLoadsAHighDivider() {
    Rows rows =
        Rows.of("B1 battery s 0 volts=24; R1 resistor s n ohms=250M; R2 resistor n 0 ohms=250M");
    Point n = Rows.pin("R2.1");
    Point ground = Rows.pin("R2.2");
    assertThat(with(rows).volts(n, ground)).isCloseTo(12, within(1e-9));
    assertThat(with(rows, new Edit.Across(n, ground, 10e6)).volts(n, ground))
        .isCloseTo(0.8889, within(1e-4));
  }

  /** M2: Bird 2e, 10.5. */
  @Test
  @Published(Family.METER)
  void aMovingCoilMeterReadsLow() {
    Rows rows =
        Rows.of("B1 battery s 0 volts=100; R1 resistor s n ohms=60k; R2 resistor n 0 ohms=40k");
    Point n = Rows.pin("R2.1");
    Point ground = Rows.pin("R2.2");
    assertThat(with(rows).volts(n, ground)).isCloseTo(40, within(1e-9));
    assertThat(with(rows, new Edit.Across(n, ground, 160e3)).volts(n, ground))
        .isCloseTo(34.78, within(0.01));
  }

  /** M3: Bird 2e, 10.4. */
  @Test
  @Published(Family.METER)
  void anAmmeterLowersTheCurrentThatItMeasures() {
    Rows rows = Rows.of("B1 battery s 0 volts=10; R1 resistor s 0 ohms=500");
    var meter = new Edit.InSeries(Rows.lead("R1.1"), 50);
    assertThat(with(rows).current(Rows.lead("R1.1"))).isCloseTo(20e-3, within(1e-9));
    assertThat(with(rows, meter).current(Rows.lead("R1.1"))).isCloseTo(18.18e-3, within(1e-5));
    assertThat(with(rows, meter).volts(new Point.AtNet(0), Rows.pin("R1.1")))
        .isCloseTo(50 * 18.18e-3, within(1e-3));
  }

  /** M4: OpenStax College Physics. */
  @Test
  @Published(Family.METER)
  void aMeterLoadsACellABit() {
    Rows rows = Rows.of("B1 battery a 0 volts=1.585 internal=0.1");
    Point plus = Rows.pin("B1.+");
    Point minus = Rows.pin("B1.-");
    OperatingPoint loaded = with(rows, new Edit.Across(plus, minus, 1000));
    assertThat(-loaded.current(Rows.lead("B1.+"))).isCloseTo(1.58e-3, within(1e-5));
    assertThat(loaded.volts(plus, minus)).isCloseTo(1.5848, within(1e-4));
  }

  /** M6: Kuphaldt, DC 8. */
  @Test
  @Published(Family.METER)
  void aShuntOfOneOhmHardlyDisturbs() {
    Rows rows = Rows.of("B1 battery s 0 volts=12; R1 resistor s 0 ohms=15k");
    assertThat(with(rows, new Edit.InSeries(Rows.lead("R1.1"), 1)).current(Rows.lead("R1.1")))
        .isCloseTo(0.7999e-3, within(1e-7));
  }

  private static final Rows STRING =
      Rows.of(
          "B1 battery s 0 volts=24; R1 resistor s a ohms=150; R2 resistor a b ohms=120;"
              + "R3 resistor b c ohms=180; R4 resistor c 0 ohms=150");

  private static void reads(OperatingPoint point, double slack, double... volts) {
    for (int k = 0; k < volts.length; k++) {
      String ref = "R" + (k + 1);
      assertThat(point.volts(Rows.pin(ref + ".1"), Rows.pin(ref + ".2")))
          .as(ref)
          .isCloseTo(volts[k], within(slack));
    }
  }

  /** X1: Grob 4-6. An open contact is 1 GΩ: the string still carries 24 nA. */
  @Test
  @Published(Family.METER)
  void anOpenResistorTakesTheWholeVoltage() {
    reads(with(STRING), 0.05, 6.0, 4.8, 7.2, 6.0);
    Edit open = new Edit.Contact(Rows.lead("R3.1"), 1e9);
    OperatingPoint point = with(STRING, open);
    assertThat(point.volts(STRING.at("b"), STRING.at("c"))).isCloseTo(24, within(0.05));
    reads(with(STRING, open), 0.05, 0, 0, 0, 0);
    reads(with(STRING, new Edit.Without("R3")), 1e-9, 0, 0, 24, 0);
  }

  /** X2: Grob 4-7. */
  @Test
  @Published(Family.METER)
  void aShortedResistorGivesItsShareToTheOthers() {
    Edit shorted = new Edit.Across(Rows.pin("R4.1"), Rows.pin("R4.2"), 0);
    reads(with(STRING, shorted), 0.05, 8, 6.4, 9.6, 0);
  }

  /** X3: Grob 6-3; the pair 100∥150 and 36 V from memory. */
  @Test
  @Published(Family.METER)
  void aLostPartnerIsSeenInTheVoltagesRoundIt() {
    Rows rows =
        Rows.of(
            "B1 battery s 0 volts=36; R1 resistor s a ohms=120; R2 resistor a b ohms=100;"
                + "R3 resistor a b ohms=150; R4 resistor b 0 ohms=180");
    OperatingPoint point = with(rows, new Edit.Contact(Rows.lead("R3.1"), 1e9));
    assertThat(point.volts(rows.at("s"), rows.at("a"))).isCloseTo(10.8, within(0.05));
    assertThat(point.volts(rows.at("a"), rows.at("b"))).isCloseTo(9, within(0.05));
    assertThat(point.volts(rows.at("b"), rows.at("0"))).isCloseTo(16.2, within(0.05));
    double ohms = point.volts(rows.at("a"), rows.at("b")) / point.current(Rows.lead("R4.1"));
    assertThat(ohms).isCloseTo(100, within(0.5));
  }

  /** 9 V by 100k/100k: 4.48, 4.29, 3.60 V with 10 MΩ, 1 MΩ and 200 kΩ across the lower (calc). */
  @Test
  @Published(Family.METER)
  void threeMetersReadThreeVoltages() {
    Rows rows =
        Rows.of("B1 battery s 0 volts=9; R1 resistor s n ohms=100k; R2 resistor n 0 ohms=100k");
    double[] ohms = {10e6, 1e6, 200e3};
    double[] volts = {4.48, 4.29, 3.60};
    for (int k = 0; k < ohms.length; k++) {
      Edit meter = new Edit.Across(rows.at("n"), rows.at("0"), ohms[k]);
      assertThat(with(rows, meter).volts(rows.at("n"), rows.at("0")))
          .isCloseTo(volts[k], within(0.01));
    }
  }
}
