package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.holewise.engine.part.Pin;
import org.holewise.engine.quantity.Parameter;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Slopes and resistances of an operating point against differences between solved circuits. */
@Tag("fast")
class ResponseTest {
  /** Error of a central difference with a step of 1e-4 of the value, and of its rounding. */
  private static final double SHARE = 1e-4;

  private static final String LAMP =
      "B1 battery s 0 volts=6 internal=1; S1 switch s f closed=true; R1 resistor f l ohms=390;"
          + "D1 led l 0 colour=green";
  private static final String TRANSISTOR =
      "B1 battery v 0 volts=9 internal=1.5; R1 resistor v x ohms=47k; R2 resistor x 0 ohms=10k;"
          + "P1 potentiometer x b v ohms=100k set=0.2; Q1 npn c b e; R3 resistor v c ohms=2.2k;"
          + "R4 resistor e 0 ohms=470; Q2 pnp d c v; R5 resistor d 0 ohms=1k; D1 diode d 0";
  private static final String LIMITED =
      "V1 supply a 0 volts=12 limit=20m; R1 resistor a b ohms=100; D1 zener 0 b"
          + " breakdown.volts=5.1; R2 resistor b 0 ohms=1k; V2 supply d 0 volts=5;"
          + "R3 resistor d b ohms=4.7k; S1 button d g h i closed=true; R4 resistor i 0 ohms=330";

  @ParameterizedTest
  @ValueSource(strings = {LAMP, TRANSISTOR, LIMITED})
  void slopesOfVoltagesAreThoseOfDifferences(String text) {
    Circuit circuit = Rows.circuit(text);
    OperatingPoint point = Rows.solved(circuit);
    List<Pin> pins = Rows.of(text).parts().stream().flatMap(p -> p.pins().stream()).toList();
    Point minus = new Point.AtPin(pins.get(1));
    for (Pin pin : pins) {
      Point plus = new Point.AtPin(pin);
      Response response = point.response(plus, minus);
      assertThat(response.value()).isEqualTo(point.volts(plus, minus));
      compare(circuit, response, p -> p.volts(plus, minus));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {LAMP, TRANSISTOR, LIMITED})
  void slopesOfCurrentsAreThoseOfDifferences(String text) {
    Circuit circuit = Rows.circuit(text);
    OperatingPoint point = Rows.solved(circuit);
    for (Pin pin : Rows.of(text).parts().stream().flatMap(p -> p.pins().stream()).toList()) {
      Response response = point.currentResponse(pin);
      assertThat(response.value()).isEqualTo(point.current(pin));
      assertThat(response.ohms()).isZero();
      compare(circuit, response, p -> p.current(pin));
    }
  }

  private interface Reading {
    double of(OperatingPoint point);
  }

  private static void compare(Circuit circuit, Response response, Reading reading) {
    List<Parameter> parameters = circuit.parameters();
    double[] values = parameters.stream().mapToDouble(Parameter::nominal).toArray();
    double most = Math.abs(response.value()) + 1e-9;
    for (int k = 0; k < values.length; k++) {
      double was = values[k];
      double h = was == 0 ? 1e-5 : 1e-4 * was;
      values[k] = was + h;
      double above = reading.of(Rows.solved(circuit.at(values)));
      values[k] = was - h;
      double below = reading.of(Rows.solved(circuit.at(values)));
      values[k] = was;
      double slope = (above - below) / (2 * h);
      assertThat(response.slopes()[k])
          .as(parameters.get(k).name())
          .isCloseTo(slope, within(SHARE * Math.abs(slope) + 1e-7 * most / Math.max(1, was)));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {LAMP, TRANSISTOR, LIMITED})
  void resistanceIsWhatALittleCurrentMeets(String text) {
    Circuit circuit = Rows.circuit(text);
    OperatingPoint point = Rows.solved(circuit);
    List<Pin> pins = Rows.of(text).parts().stream().flatMap(p -> p.pins().stream()).toList();
    Point minus = new Point.AtPin(pins.get(1));
    for (Pin pin : pins) {
      Point plus = new Point.AtPin(pin);
      double ohms = point.response(plus, minus).ohms();
      double amps = 1e-6 / Math.max(1, ohms);
      double above = fed(circuit, plus, minus, amps);
      double below = fed(circuit, plus, minus, -amps);
      assertThat(ohms).isCloseTo((above - below) / (2 * amps), within(1e-5 * ohms + 1e-7));
    }
  }

  private static double fed(Circuit circuit, Point plus, Point minus, double amps) {
    return Rows.solved(circuit.with(List.of(new Edit.Feed(plus, minus, amps)))).volts(plus, minus);
  }

  /** Loaded with a meter, a divider falls by the meter's share of its Thévenin resistance. */
  @Test
  void resistanceForetellsWhatAMeterDoes() {
    Rows rows = Rows.of("B1 battery a 0 volts=9; R1 resistor a b ohms=1M; R2 resistor b 0 ohms=1M");
    Point b = rows.at("b");
    Response free = Rows.solved(rows.circuit()).response(b, rows.at("0"));
    Edit meter = new Edit.Across(b, rows.at("0"), 10e6);
    double loaded = Rows.solved(rows.circuit().with(List.of(meter))).volts(b, rows.at("0"));
    assertThat(free.value() * 10e6 / (10e6 + free.ohms())).isCloseTo(loaded, within(1e-9));
  }

  /** An ammeter at a closed switch: the slopes of a current that no law gives. */
  @Test
  void currentsThroughContactsHaveSlopesToo() {
    Rows rows =
        Rows.of("B1 battery a 0 volts=6; S1 switch a b closed=true; R1 resistor b 0 ohms=1k");
    Response response = Rows.solved(rows.circuit()).currentResponse(Rows.lead("S1.1"));
    assertThat(response.value()).isCloseTo(6e-3, within(1e-15));
    assertThat(response.slopes()[0]).isCloseTo(1e-3, within(1e-15));
    assertThat(response.slopes()[1]).isCloseTo(-6e-6, within(1e-15));
  }
}
