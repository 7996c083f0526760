package org.holewise.school.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Kind;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Registry;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What one drawer holds, and what belongs into another. */
@Tag("fast")
class PartKeyTest {

  @Test
  void tellsResistorsByValueToleranceAndRating() {
    assertThat(key("resistor", Map.of("ohms", 330.0))).isEqualTo("resistor 330 Ω");
    assertThat(key("resistor", Map.of("ohms", 4700.0, "tolerance", 0.01)))
        .isEqualTo("resistor 4.7 kΩ 1 %");
    assertThat(key("resistor", Map.of("ohms", 330.0, "rating", 2.0)))
        .isEqualTo("resistor 330 Ω 2 W");
  }

  @Test
  void takesWhatIsUsualForTheSameAsNothingSaid() {
    assertThat(key("resistor", Map.of("ohms", 330.0, "tolerance", 0.05, "rating", 0.25)))
        .isEqualTo(key("resistor", Map.of("ohms", 330.0)));
    assertThat(key("led", Map.of("colour", "red"))).isEqualTo(key("led", Map.of()));
  }

  @Test
  void doesNotTellApartWhatNoLabelSays() {
    assertThat(key("switch", Map.of("closed", true))).isEqualTo("switch");
    assertThat(key("button", Map.of())).isEqualTo("button");
    assertThat(key("npn", Map.of("gain", 300.0))).isEqualTo("npn");
    assertThat(key("battery", Map.of("volts", 9.0, "internal", 2.0))).isEqualTo("battery 9 V");
    assertThat(key("potentiometer", Map.of("ohms", 1e4, "set", 0.3)))
        .isEqualTo("potentiometer 10 kΩ");
    assertThat(key("led", Map.of("colour", "true-green", "limit", 0.01)))
        .isEqualTo("led true-green");
  }

  @Test
  void tellsTypesWhateverTheirCaseAndSpaces() {
    assertThat(key("diode", Map.of("type", "1n 4148"))).isEqualTo("diode 1N4148");
    assertThat(key("pnp", Map.of("type", " bc557b"))).isEqualTo("pnp BC557B");
    assertThat(key("diode", Map.of())).isEqualTo("diode");
  }

  @Test
  void tellsZenersByTheirBreakdown() {
    assertThat(key("zener", Map.of("breakdown", new Fields(Map.of("volts", 5.1)))))
        .isEqualTo("zener 5.1 V");
  }

  @Test
  void tellsBenchSuppliesByTheirOutputsOnly() {
    var row = new Fields(Map.of("volts", 5.0));
    assertThat(key("supply", Map.of("volts", 5.0))).isEqualTo("supply");
    assertThat(key("supply", Map.of("outputs", List.of(row, row)))).isEqualTo("supply 2 outputs");
  }

  @ParameterizedTest
  @CsvSource({
    "resistor 330, resistor 330 Ω",
    "Resistor 4k7, resistor 4.7 kΩ",
    "resistor 4.7 k 5%, resistor 4.7 kΩ",
    "'  resistor   1 %  4700 ohm', resistor 4.7 kΩ 1 %",
    "resistor 330 ohm 2 W 1 %, resistor 330 Ω 1 % 2 W",
    "LED Blue, led blue",
    "led, led red",
    "npn bc547b, npn BC547B",
    "battery 9V, battery 9 V",
    "battery 9, battery 9 V",
    "zener 5.1 V, zener 5.1 V",
    "supply, supply",
    "supply 2 outputs, supply 2 outputs",
    "generator, generator",
    "board 830-SPLIT, board 830-split",
    "meter hand-2000, meter hand-2000"
  })
  void readsWhatIsTypedInAnyCaseOrderAndPrefix(String typed, String key) {
    assertThat(PartKey.read(typed)).contains(new PartKey(key));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "   ",
        "resistor",
        "resistor red",
        "resistor 330 5",
        "resistor 330 Ω 470 Ω",
        "resistor -330",
        "led mauve",
        "switch closed",
        "battery",
        "lamp 6 V",
        "board",
        "board 12",
        "meter",
        "supply 5 V"
      })
  void readsNothingIntoWhatNamesNoPart(String typed) {
    assertThat(PartKey.read(typed)).isEmpty();
  }

  static List<Kind> kinds() {
    return Registry.kinds();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void readsItsOwnTextBack(Kind kind) {
    var fields =
        Map.of(
            "ohms", 2200.0,
            "farads", 1e-7,
            "henries", 1e-3,
            "hertz", 1000.0,
            "volts", 6.0,
            "tolerance", 0.02,
            "rating", 1.0,
            "colour", "green",
            "breakdown", new Fields(Map.of("volts", 4.7)));
    var key = PartKey.of(new Part("X1", kind, new Fields(Map.copyOf(fields))));
    assertThat(key.kind()).isEqualTo(kind.name());
    assertThat(PartKey.read(key.text())).isEqualTo(Optional.of(key));
  }

  @Test
  void fitsTheStoresList() {
    assertThat(key("npn", Map.of("type", "x".repeat(300)))).hasSize(PartKey.LONGEST);
  }

  private static String key(String kind, Map<String, Object> fields) {
    var part = new Part("X1", Registry.kind(kind).orElseThrow(), new Fields(fields));
    return PartKey.of(part).text();
  }
}
