package org.holewise.engine.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Spread;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("fast")
class KindsTest {

  private static Part part(String kind, Fields fields) {
    return new Part("X1", Registry.kind(kind).orElseThrow(), fields);
  }

  /** Writes down what a law stamps. */
  private static final class Sheet implements Network {
    private final List<String> pins;
    private final List<String> lines = new ArrayList<>();
    private final List<Parameter> parameters = new ArrayList<>();
    private int nodes;

    Sheet(Part part) {
      pins = part.kind().pins(part.fields());
      nodes = pins.size();
      part.kind().connect(part, this);
    }

    @Override
    public int pin(String name) {
      assertThat(pins).contains(name);
      return pins.indexOf(name);
    }

    @Override
    public int node() {
      return nodes++;
    }

    @Override
    public double celsius() {
      return 25;
    }

    @Override
    public void number(Parameter number) {
      parameters.add(number);
    }

    @Override
    public void join(int a, int b) {
      lines.add("join " + a + " " + b);
    }

    @Override
    public void resistor(int a, int b, Parameter ohms) {
      lines.add("resistor " + a + " " + b + " " + ohms.nominal());
      parameters.add(ohms);
    }

    @Override
    public void source(int plus, int minus, Parameter volts) {
      lines.add("source " + plus + " " + minus + " " + volts.nominal());
      parameters.add(volts);
    }

    @Override
    public void source(int plus, int minus, Parameter volts, double limit) {
      lines.add("source " + plus + " " + minus + " " + volts.nominal() + " limit " + limit);
      parameters.add(volts);
    }

    @Override
    public boolean used(List<String> some) {
      return true;
    }

    @Override
    public void generator(
        int plus, int minus, Parameter offset, Parameter peak, double hertz, Wave wave) {
      lines.add("generator " + plus + " " + minus + " " + offset.nominal() + " " + peak.nominal());
      parameters.add(offset);
      parameters.add(peak);
    }

    @Override
    public void inductor(int a, int b, Parameter henries) {
      lines.add("inductor " + a + " " + b + " " + henries.nominal());
      parameters.add(henries);
    }

    @Override
    public void device(Device device, int... nodes) {
      assertThat(nodes).hasSize(device.terminals());
      lines.add("device " + nodes.length);
      parameters.addAll(device.parameters());
    }

    @Override
    public void capacitor(int a, int b, Parameter farads) {
      parameters.add(farads);
    }

    @Override
    public void logic(Logic logic, int plus, int minus, int[] inputs, Driver... outputs) {
      assertThat(inputs).hasSize(logic.inputs());
      assertThat(outputs).hasSize(logic.outputs());
      lines.add("logic " + plus + " " + minus);
      for (Driver output : outputs) {
        parameters.addAll(output.high().parameters());
        parameters.addAll(output.low().parameters());
      }
    }
  }

  private static Sheet sheet(String kind, Fields fields) {
    return new Sheet(part(kind, fields));
  }

  private static Spread spread(Sheet sheet, String parameter) {
    return sheet.parameters.stream()
        .filter(p -> p.name().equals("X1." + parameter))
        .findFirst()
        .orElseThrow()
        .spread();
  }

  static List<Kind> kinds() {
    return Registry.kinds();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void fieldsHaveDifferentNamesAndDefaultsInTheirRange(Kind kind) {
    assertThat(kind.fields()).extracting(Field::name).doesNotHaveDuplicates();
    assertThat(Registry.kind(kind.name())).contains(kind);
    kind.fields().forEach(KindsTest::check);
  }

  private static void check(Field field) {
    assertThat(field.meaning()).endsWith(".");
    if (field instanceof Field.Number n) {
      n.fallback().ifPresent(value -> assertThat(value).isBetween(n.least(), n.most()));
    } else if (field instanceof Field.Group g) {
      g.fields().forEach(KindsTest::check);
    } else if (field instanceof Field.Rows r) {
      r.fields().forEach(KindsTest::check);
    } else if (field instanceof Field.Choice c) {
      assertThat(c.options()).containsAll(c.fallback().stream().toList());
    }
  }

  @Test
  void defaultsAreTheProjectsLaw() {
    assertThat(part("resistor", Fields.NONE).number("tolerance")).isEqualTo(0.05);
    assertThat(part("potentiometer", Fields.NONE).number("tolerance")).isEqualTo(0.2);
    assertThat(part("battery", Fields.NONE).number("spread")).isEqualTo(0.05);
    assertThat(part("npn", Fields.NONE).number("gain")).isEqualTo(200);
    assertThat(part("pnp", Fields.NONE).number("reverseGain")).isEqualTo(4);
    assertThat(part("npn", Fields.NONE).number("saturation")).isEqualTo(1e-14);
    assertThat(spread(sheet("led", Fields.NONE), "forward")).isEqualTo(new Spread.Normal(0.08));
    assertThat(spread(sheet("diode", Fields.NONE), "forward")).isEqualTo(new Spread.Normal(0.015));
    assertThat(spread(sheet("npn", Fields.NONE), "gain")).isEqualTo(new Spread.LogNormal(0.35));
    assertThat(spread(sheet("npn", Fields.NONE), "shift")).isEqualTo(new Spread.Normal(0.015));
  }

  @Test
  void aTypeNumberDecidesBetweenTheTwoDiodes() {
    assertThat(sheet("diode", Fields.NONE.with("type", "1n4007")).parameters.get(0).nominal())
        .isEqualTo(0.7);
    assertThat(sheet("diode", Fields.NONE.with("type", "1N4148")).parameters.get(0).nominal())
        .isEqualTo(0.62);
    assertThat(sheet("diode", Fields.NONE).parameters.get(0).nominal()).isEqualTo(0.62);
  }

  /** Kuphaldt, Semiconductors 3: red 1.5–2.4, yellow and green 1.7–2.8, blue and white 3–4 V. */
  @Test
  void lampsLieInTheRangesOfTheirColours() {
    Map.of("red", List.of(1.5, 2.4), "green", List.of(1.7, 2.8), "blue", List.of(3.0, 4.0))
        .forEach(
            (colour, range) ->
                assertThat(
                        sheet("led", Fields.NONE.with("colour", colour))
                            .parameters
                            .get(0)
                            .nominal())
                    .isBetween(range.get(0), range.get(1)));
  }

  @Test
  void aGivenForwardPointBeatsTheColour() {
    Fields point = Fields.NONE.with("volts", 1.85);
    Fields lamp = Fields.NONE.with("colour", "blue").with("forward", point);
    assertThat(sheet("led", lamp).parameters.get(0).nominal()).isEqualTo(1.85);
  }

  @Test
  void aButtonHasTheSevenExchangesThatKeepTwinsTogether() {
    Kind button = Registry.kind("button").orElseThrow();
    var exchanges = button.exchanges(Fields.NONE);
    assertThat(new HashSet<>(exchanges)).hasSize(7);
    for (var exchange : exchanges) {
      assertThat(new HashSet<>(exchange.values())).hasSize(4);
      assertThat(exchange.entrySet()).anyMatch(e -> !e.getKey().equals(e.getValue()));
      assertThat(exchange.get("1").charAt(0)).isEqualTo(exchange.get("1a").charAt(0));
      assertThat(exchange.get("2").charAt(0)).isEqualTo(exchange.get("2a").charAt(0));
    }
  }

  @Test
  void aWiperAtAnEndIsOnePieceOfMetalWithIt() {
    Fields pot = Fields.NONE.with("ohms", 1e4);
    assertThat(sheet("potentiometer", pot.with("set", 0.0)).lines)
        .containsExactly("join 0 1", "resistor 1 2 10000.0");
    assertThat(sheet("potentiometer", pot.with("set", 1.0)).lines)
        .containsExactly("join 1 2", "resistor 0 1 10000.0");
    assertThat(spread(sheet("potentiometer", pot.with("set", "unknown")), "set"))
        .isEqualTo(new Spread.Limit(0.5));
  }

  @Test
  void aPairOfOutputsSharesItsPin() {
    Fields plus =
        Fields.NONE.with("plus", "+").with("minus", "com").with("volts", 15.0).with("limit", 0.1);
    Fields minus = Fields.NONE.with("plus", "com").with("minus", "-").with("volts", 15.0);
    Fields supply = Fields.NONE.with("outputs", List.of(plus, minus));
    assertThat(part("supply", supply).pins())
        .extracting(Pin::name)
        .containsExactly("+", "com", "-");
    assertThat(sheet("supply", supply).lines)
        .containsExactly("source 0 1 15.0 limit 0.1", "source 1 2 15.0");
    assertThat(spread(sheet("supply", supply), "volts")).isEqualTo(new Spread.Exact());
  }

  @Test
  void aSingleSupplyNeedsNoOutputs() {
    Part supply = part("supply", Fields.NONE.with("volts", 5.0).with("limit", 0.05));
    assertThat(supply.pins()).extracting(Pin::name).containsExactly("+", "-");
    assertThat(new Sheet(supply).lines).containsExactly("source 0 1 5.0 limit 0.05");
    assertThat(supply.kind().scaled(supply, 0.5)).containsEntry("volts", 2.5);
  }

  @Test
  void aBatteryHasItsResistanceInside() {
    assertThat(sheet("battery", Fields.NONE.with("volts", 9.0)).lines)
        .containsExactly("source 0 1 9.0");
    Sheet tired = sheet("battery", Fields.NONE.with("volts", 9.0).with("internal", 1.7));
    assertThat(tired.lines).containsExactly("source 2 1 9.0", "resistor 2 0 1.7");
    assertThat(spread(tired, "volts")).isEqualTo(new Spread.Normal(0.45));
  }

  @Test
  void anOpenSwitchIsNothingAtAll() {
    assertThat(sheet("switch", Fields.NONE).lines).isEmpty();
    assertThat(sheet("switch", Fields.NONE.with("closed", true)).lines).containsExactly("join 0 1");
  }

  /** MCC sheet of 2N3904: 200 mA; BC547 sheets: 100 mA; 5 mm lamps: 20 mA rated, 5 V reverse. */
  @Test
  void limitsAreThoseOfTheSheets() {
    Part npn = part("npn", Fields.NONE.with("type", "2N3904"));
    assertThat(npn.kind().limits(npn)).containsExactly(new Limit.Current("c", 0.2, 0.2));
    Part other = part("npn", Fields.NONE.with("type", "BC547B"));
    assertThat(other.kind().limits(other)).containsExactly(new Limit.Current("c", 0.1, 0.1));
    Part unknown = part("npn", Fields.NONE);
    assertThat(unknown.kind().limits(unknown)).isEmpty();
    Part lamp = part("led", Fields.NONE);
    assertThat(lamp.kind().limits(lamp))
        .containsExactly(new Limit.Current("a", 0.02, 0.03), new Limit.Reverse("a", "k", 5));
  }

  /**
   * A gain that nobody gave covers the types of a first course. MCC sheet of 2N3904: h_FE 100 to
   * 300 at 10 mA, 70 at least at 1 mA; BC547 sheet: A 110 to 220, B 200 to 450. (C, 420 to 800, is
   * beyond it: an exercise that uses one says its gain.)
   */
  @ParameterizedTest
  @CsvSource({"100, 300, 0.95", "70, 300, 0.997", "110, 220, 0.95", "200, 450, 0.997"})
  @Published(Family.BIPOLAR)
  void theUsualGainCoversTheSheets(double low, double high, double share) {
    Parameter gain =
        sheet("npn", Fields.NONE).parameters.stream()
            .filter(parameter -> parameter.name().equals("X1.gain"))
            .findFirst()
            .orElseThrow();
    assertThat(gain.spread().at(gain.nominal(), (1 - share) / 2)).isLessThan(low + 1);
    assertThat(gain.spread().at(gain.nominal(), (1 + share) / 2)).isGreaterThan(high);
  }

  @Test
  void onlyWhatHasTwoDifferentEndsCanBeReversed() {
    assertThat(Registry.kinds().stream().filter(Kind::polar).map(Kind::name))
        .containsExactly("electrolytic", "diode", "zener", "led");
    assertThat(Registry.kinds().stream().filter(Kind::source).map(Kind::name))
        .containsExactly("battery", "supply", "generator");
  }
}
