package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.holewise.engine.part.Part;
import org.holewise.engine.quantity.Parameter;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Circuits and their edits. */
@Tag("fast")
class CircuitTest {
  private final Rows rows =
      Rows.of(
          "B1 battery a 0 volts=9; R1 resistor a b ohms=1k; R2 resistor b 0 ohms=2k;"
              + "D1 led b k colour=green; R3 resistor k 0 ohms=470");

  private OperatingPoint with(Edit... edits) {
    return Rows.solved(rows.circuit().with(List.of(edits)));
  }

  private double b(OperatingPoint point) {
    return point.volts(rows.at("b"), rows.at("0"));
  }

  @Test
  void anEditLeavesTheCircuitAsItWas() {
    Circuit circuit = rows.circuit();
    double before = b(Rows.solved(circuit));
    Circuit edited = circuit.with(List.of(new Edit.Contact(Rows.lead("R2.1"), 1e9)));
    assertThat(b(Rows.solved(edited))).isGreaterThan(before + 0.1);
    assertThat(b(Rows.solved(circuit))).isEqualTo(before);
  }

  @Test
  void editsAddUp() {
    Edit one = new Edit.Without("D1");
    Edit other = new Edit.Across(rows.at("b"), rows.at("0"), 2000);
    Circuit twice = rows.circuit().with(List.of(one)).with(List.of(other));
    assertThat(b(Rows.solved(twice))).isCloseTo(4.5, within(1e-9));
    assertThat(b(with(one, other))).isEqualTo(b(Rows.solved(twice)));
  }

  @Test
  void aMovedLeadIsOnItsNewNet() {
    int k = ((Point.AtNet) rows.at("k")).net();
    OperatingPoint point = with(new Edit.Without("D1"), new Edit.Moved(Rows.lead("R2.1"), k));
    assertThat(b(point)).isCloseTo(9, within(1e-9));
  }

  @Test
  void aFreshStripTouchesNothingElse() {
    OperatingPoint point =
        with(
            new Edit.Without("D1"),
            new Edit.Moved(Rows.lead("R2.1"), 1000),
            new Edit.Moved(Rows.lead("R3.1"), 1000));
    assertThat(b(point)).isCloseTo(9, within(1e-9));
    assertThat(point.volts(new Point.AtNet(1000), rows.at("0"))).isZero();
    assertThat(point.volts(Rows.pin("R3.1"))).isZero();
    assertThat(point.floating(new Point.AtNet(1001))).isTrue();
  }

  @Test
  void anotherPartStandsInForTheFirst() {
    Part other = rows.parts().get(2).with("ohms", 1000.0);
    Circuit circuit = rows.circuit().with(List.of(new Edit.Without("D1"), new Edit.Instead(other)));
    assertThat(b(Rows.solved(circuit))).isCloseTo(4.5, within(1e-9));
    assertThat(circuit.parameters())
        .extracting(Parameter::name)
        .containsExactlyElementsOf(
            rows.circuit().parameters().stream().map(Parameter::name).toList());
    assertThat(circuit.parameters().get(2).nominal()).isEqualTo(1000);
  }

  @Test
  void aPartTakenOutKeepsItsPlacesAmongTheParameters() {
    Circuit without = rows.circuit().with(List.of(new Edit.Without("R1")));
    assertThat(without.parameters()).isEqualTo(rows.circuit().parameters());
    double[] slopes = Rows.solved(without).response(rows.at("b"), rows.at("0")).slopes();
    assertThat(slopes).hasSize(without.parameters().size());
    assertThat(slopes[1]).isZero();
  }

  @Test
  void trueValuesMayDifferFromNominalOnes() {
    Circuit circuit = rows.circuit().with(List.of(new Edit.Without("D1")));
    double[] values = circuit.parameters().stream().mapToDouble(Parameter::nominal).toArray();
    values[2] = 500;
    assertThat(b(Rows.solved(circuit.at(values)))).isCloseTo(3, within(1e-9));
    assertThatThrownBy(() -> circuit.at(new double[1])).hasMessageContaining("1 values");
  }

  @Test
  void whatIsNotThereIsAnError() {
    assertThatThrownBy(() -> with(new Edit.Without("X9"))).hasMessageContaining("X9");
    assertThatThrownBy(() -> with(new Edit.Contact(Rows.lead("R1.9"), 1)))
        .hasMessageContaining("R1.9");
  }

  /** A lamp's forward point moves with the temperature of its fit, not with the point itself. */
  @Test
  void theForwardPointHoldsAtEveryTemperature() {
    Rows lamp = Rows.of("D1 led a 0 forward.volts=2 forward.amps=10m");
    for (double celsius : new double[] {0, 25, 60}) {
      Circuit circuit =
          Circuit.of(lamp.parts(), lamp.netlist(), celsius)
              .with(List.of(new Edit.Feed(lamp.at("a"), lamp.at("0"), 10e-3)));
      assertThat(Rows.solved(circuit).volts(lamp.at("a"), lamp.at("0")))
          .isCloseTo(2, within(1e-10));
    }
  }

  /** The transport form of Ebers and Moll at 60 °C, put down here once more. */
  @Test
  void warmTransistorsHaveAnotherThermalVoltage() {
    Rows npn = Rows.of("B1 battery b 0 volts=0.6; B2 battery c 0 volts=5; Q1 npn c b 0");
    double thermal = 1.380649e-23 * (273.15 + 60) / 1.602176634e-19;
    OperatingPoint point = Rows.solved(Circuit.of(npn.parts(), npn.netlist(), 60));
    double exact = 1e-14 * (Math.expm1(0.6 / thermal) + 1.25);
    assertThat(point.current(Rows.lead("Q1.c"))).isCloseTo(exact, within(1e-9 * exact));
  }
}
