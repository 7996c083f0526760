package org.holewise.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The forms of numbers and prefixes are those of the SI Brochure, 9th edition, 3 and 5.4. */
@Tag("fast")
class DisplayTest {

  @ParameterizedTest
  @CsvSource({
    "4700, OHM, 4.7 kΩ, 4.70 kΩ",
    "0.0099, AMP, 9.9 mA, 9.90 mA",
    "5, VOLT, 5 V, 5.00 V",
    "390, OHM, 390 Ω, 390 Ω",
    "47300, OHM, 47.3 kΩ, 47.3 kΩ",
    "999.4, OHM, 999 Ω, 999 Ω",
    "999.9, OHM, 1 kΩ, 1.00 kΩ",
    "99.96, VOLT, 100 V, 100 V",
    "1.005, VOLT, 1.01 V, 1.01 V",
    "2.2e-6, FARAD, 2.2 µF, 2.20 µF",
    "0.47e-12, FARAD, 4.7e−13 F, 4.70e−13 F",
    "1e-14, AMP, 1e−14 A, 1.00e−14 A",
    "999.6e9, OHM, 1e12 Ω, 1.00e12 Ω",
    "1e9, OHM, 1 GΩ, 1.00 GΩ",
    "0, VOLT, 0 V, 0.00 V",
    "-0.0, VOLT, 0 V, 0.00 V",
    "-1.8, VOLT, −1.8 V, −1.80 V",
    "0.05, FRACTION, 5 %, 5.00 %",
    "0.0025, FRACTION, 0.25 %, 0.250 %",
    "1, FRACTION, 100 %, 100 %",
    "-3.0103, DECIBEL, −3.01 dB, −3.01 dB",
    "25, CELSIUS, 25 °C, 25.0 °C",
    "200000, COUNT, 200000, 200000",
    "2, COUNT, 2, 2.00",
    "1e6, COUNT, 1e6, 1.00e6",
    "1000, HERTZ, 1 kHz, 1.00 kHz",
  })
  void printsThreeDigitsWithPrefixAndUnit(double si, Unit unit, String value, String reading) {
    assertThat(Display.value(si, unit)).isEqualTo(value);
    assertThat(Display.reading(si, unit)).isEqualTo(reading);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void refusesWhatIsNoNumber(double si) {
    assertThatThrownBy(() -> Display.value(si, Unit.VOLT))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  @ResourceLock(Resources.LOCALE)
  void printsTheSameInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      for (Locale locale :
          new Locale[] {Locale.GERMANY, Locale.forLanguageTag("ar-EG-u-nu-arab")}) {
        Locale.setDefault(locale);
        assertThat(Display.reading(-4740.2, Unit.OHM)).isEqualTo("−4.74 kΩ");
      }
    } finally {
      Locale.setDefault(before);
    }
  }
}
