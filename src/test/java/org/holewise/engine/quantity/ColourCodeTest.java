package org.holewise.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@Tag("fast")
class ColourCodeTest {

  /** Kuphaldt, Lessons in Electric Circuits, reference volume, ch. 2. */
  @ParameterizedTest
  @CsvSource({
    "yellow violet orange gold, 47e3, 0.05",
    "green red gold silver, 5.2, 0.1",
    "white violet black, 97, 0.2",
    "orange orange black brown violet, 3300, 0.001",
    "brown green grey silver red, 1.58, 0.02",
    "blue brown green silver blue, 6.15, 0.0025",
  })
  @Published(Family.CODE)
  void readsAndWritesTheBooksExamples(String names, double ohms, double tolerance) {
    List<Colour> bands = bands(names);
    assertThat(ColourCode.read(bands))
        .isEqualTo(new CodedResistor(ohms, tolerance, OptionalInt.empty()));
    assertThat(ColourCode.bands(ohms, tolerance, bands.size())).contains(bands);
  }

  /** IEC 60062: the tolerance colours on which its editions agree. */
  @ParameterizedTest
  @CsvSource({
    "brown, 0.01",
    "red, 0.02",
    "green, 0.005",
    "blue, 0.0025",
    "violet, 0.001",
    "gold, 0.05",
    "silver, 0.1",
    "none, 0.2"
  })
  @Published(Family.CODE)
  void readsTheToleranceColour(String colour, double tolerance) {
    assertThat(ColourCode.read(bands("brown black red " + colour)))
        .isEqualTo(new CodedResistor(1000, tolerance, OptionalInt.empty()));
  }

  /** IEC 60062, temperature coefficients (from memory). */
  @ParameterizedTest
  @CsvSource({
    "black, 250",
    "brown, 100",
    "red, 50",
    "orange, 15",
    "yellow, 25",
    "green, 20",
    "blue, 10",
    "violet, 5",
    "grey, 1"
  })
  @Published(Family.CODE)
  void readsASixthBandAsTemperatureCoefficient(String colour, int ppm) {
    assertThat(ColourCode.read(bands("brown black black brown brown " + colour)))
        .isEqualTo(new CodedResistor(1000, 0.01, OptionalInt.of(ppm)));
  }

  @ParameterizedTest
  @CsvSource({
    "'', 0",
    "red red, 2",
    "red red red red red red red, 7",
    "gold red red, 0",
    "black red red, 0",
    "red none red gold, 1",
    "red red none gold, 2",
    "red red red white, 3",
    "red red red red red gold, 5",
  })
  void namesTheBandThatCannotBe(String names, int band) {
    assertThat(ColourCode.read(bands(names))).isEqualTo(new ColourReading.NoCode(band));
  }

  @Test
  void saysWhatTheBandsReadFromTheWrongEnd() {
    // 4.7 kΩ of 1 % from the wrong end: brown brown black violet yellow is no tolerance, but
    // 1.0 kΩ of 1 %, brown black black brown brown, reads 110 Ω of 1 %
    assertThat(ColourCode.reversed(bands("yellow violet black brown brown")))
        .isEqualTo(new ColourReading.NoCode(4));
    assertThat(ColourCode.reversed(bands("brown black black brown brown")).resistor())
        .contains(new CodedResistor(110, 0.01, OptionalInt.empty()));
    assertThat(ColourCode.reversed(bands("yellow violet red gold")).resistor()).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Series.class)
  void readsBackTheBandsOfEveryPreferredValue(Series series) {
    for (int significand : series.significands()) {
      for (int power = -1; power <= 5; power++) {
        double ohms = Double.parseDouble(significand + "e" + power);
        List<Colour> bands = ColourCode.bands(ohms, 0.01, 5).orElseThrow();
        assertThat(ColourCode.read(bands))
            .isEqualTo(new CodedResistor(ohms, 0.01, OptionalInt.empty()));
        List<Colour> backwards = new ArrayList<>(bands);
        Collections.reverse(backwards);
        assertThat(ColourCode.reversed(backwards)).isEqualTo(ColourCode.read(bands));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "4990, 0.05, 4", // three figures in two bands
    "1000, 0.05, 3", // three bands say 20 %
    "1000, 0.03, 4", // no such colour
    "1000, 0.2, 5", // the bare place of 20 % goes with two figures only
    "0.01, 0.05, 4", // below the silver multiplier
    "1e12, 0.05, 4",
    "1000, 0.05, 6", // no coefficient was given
    "0, 0.05, 4",
    "-1, 0.05, 4",
    "NaN, 0.05, 4",
  })
  void writesNoBandsThatWouldSaySomethingElse(double ohms, double tolerance, int count) {
    assertThat(ColourCode.bands(ohms, tolerance, count)).isEmpty();
  }

  private static List<Colour> bands(String names) {
    return Stream.of(names.split(" "))
        .filter(name -> !name.isEmpty())
        .map(name -> Colour.valueOf(name.toUpperCase(Locale.ROOT)))
        .toList();
  }
}
