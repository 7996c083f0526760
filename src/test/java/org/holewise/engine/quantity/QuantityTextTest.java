package org.holewise.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.holewise.engine.quantity.Parsed.Why;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@Tag("fast")
class QuantityTextTest {

  private static final int VALUES = 10_000;
  private static final double HALF_OF_THIRD_DIGIT = 0.005 * (1 + 1e-9);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "390 | OHM | 390",
        "4700 | OHM | 4700",
        "4.7k | OHM | 4700",
        "4.7K | OHM | 4700",
        "4,7k | OHM | 4700",
        "4.7 kohm | OHM | 4700",
        "4.7 k ohm | OHM | 4700",
        "4.7 kΩ | OHM | 4700",
        "4.7 k\u2126 | OHM | 4700",
        "470 R | OHM | 470",
        "470R | OHM | 470",
        "1 kilohm | OHM | 1000",
        "2.2 megohm | OHM | 2200000",
        "10 M | OHM | 10000000",
        "10 mΩ | OHM | 0.01",
        "1e3 | OHM | 1000",
        "1E+3 ohm | OHM | 1000",
        "0.25 W | WATT | 0.25",
        "20 mA | AMP | 0.02",
        "20mA | AMP | 0.02",
        "100 uA | AMP | 1e-4",
        "100 \u00b5A | AMP | 1e-4",
        "100 \u03bcA | AMP | 1e-4",
        "1e-14 | AMP | 1e-14",
        "-15 | VOLT | -15",
        "\u221215 V | VOLT | -15",
        "\u2013 15 V | VOLT | -15",
        "+5 V | VOLT | 5",
        "2,05 V | VOLT | 2.05",
        ".5 V | VOLT | 0.5",
        "5. V | VOLT | 5",
        "1,000 | VOLT | 1",
        "22 pF | FARAD | 22e-12",
        "100n | FARAD | 100e-9",
        "4.7 uF | FARAD | 4.7e-6",
        "10 mH | HENRY | 0.01",
        "1 kHz | HERTZ | 1000",
        "1 MHz | HERTZ | 1e6",
        "1 mHz | HERTZ | 0.001",
        "1 G | HERTZ | 1e9",
        "20 ms | SECOND | 0.02",
        "5 % | FRACTION | 0.05",
        "5% | FRACTION | 0.05",
        "0.05 | FRACTION | 0.05",
        "32 dB | DECIBEL | 32",
        "25 °C | CELSIUS | 25",
        "25 | CELSIUS | 25",
        "200k | COUNT | 200000",
        "200 | COUNT | 200",
        "-0 | VOLT | 0",
        "0e9 | VOLT | 0",
      })
  void readsWhatTeachersAndProgramsWrite(String text, Unit unit, double expected) {
    assertThat(QuantityText.parse(text, unit)).isEqualTo(new Parsed.Value(expected));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4k7 | OHM | 4700",
        "4K7 | OHM | 4700",
        "4k7 Ω | OHM | 4700",
        "4k7 ohms | OHM | 4700",
        "4R7 | OHM | 4.7",
        "R33 | OHM | 0.33",
        "47K3 | OHM | 47300",
        "4M7 | OHM | 4700000",
        "2u2 | FARAD | 2.2e-6",
        "2\u00b52 | FARAD | 2.2e-6",
        "2\u03bc2F | FARAD | 2.2e-6",
        "4n7 | FARAD | 4.7e-9",
        "p47 | FARAD | 0.47e-12",
        "1m5 | FARAD | 1.5e-3",
        "1F5 | FARAD | 1.5",
      })
  void readsTheLetterCodeWhereOhmsOrFaradsAreWanted(String text, Unit unit, double expected) {
    assertThat(QuantityText.parse(text, unit)).isEqualTo(new Parsed.Value(expected));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | VOLT | EMPTY",
        "' \u00a0\t' | VOLT | EMPTY",
        "five | VOLT | NOT_A_NUMBER",
        "V | VOLT | NOT_A_NUMBER",
        ". | VOLT | NOT_A_NUMBER",
        "- | VOLT | NOT_A_NUMBER",
        "--5 | VOLT | NOT_A_NUMBER",
        "e3 | VOLT | NOT_A_NUMBER",
        "NaN | VOLT | NOT_A_NUMBER",
        "Infinity | VOLT | NOT_A_NUMBER",
        "-Infinity | VOLT | NOT_A_NUMBER",
        "0x10 | VOLT | NOT_A_NUMBER",
        "0x1p3 | VOLT | NOT_A_NUMBER",
        "4.7k5 | OHM | NOT_A_NUMBER",
        "5 V 3 | VOLT | NOT_A_NUMBER",
        "1R8J | OHM | NOT_A_NUMBER",
        "1'000 | OHM | NOT_A_NUMBER",
        "11111111111111111111111111111111111111111 | OHM | NOT_A_NUMBER",
        "1,000.5 | OHM | AMBIGUOUS_SEPARATOR",
        "'1.000,5' | OHM | AMBIGUOUS_SEPARATOR",
        "1,000,000 | OHM | AMBIGUOUS_SEPARATOR",
        "1.000.000 | OHM | AMBIGUOUS_SEPARATOR",
        "1 000 | OHM | AMBIGUOUS_SEPARATOR",
        "1,,5 | OHM | AMBIGUOUS_SEPARATOR",
        "10 fA | AMP | WRONG_UNIT",
        "5 A | VOLT | WRONG_UNIT",
        "5 bananas | VOLT | WRONG_UNIT",
        "5 kk | OHM | WRONG_UNIT",
        "470R | VOLT | WRONG_UNIT",
        "4k7 | VOLT | WRONG_UNIT",
        "4n7 | OHM | WRONG_UNIT",
        "4k7 | FARAD | WRONG_UNIT",
        "4k7 F | OHM | WRONG_UNIT",
        "5 m% | FRACTION | WRONG_UNIT",
        "5 k | FRACTION | WRONG_UNIT",
        "5 % | COUNT | WRONG_UNIT",
        "1 mdB | DECIBEL | WRONG_UNIT",
        "5 V. | VOLT | WRONG_UNIT",
        "5.. | VOLT | WRONG_UNIT",
        "4m7 | OHM | CASE_UNCLEAR",
        "2M2 | FARAD | CASE_UNCLEAR",
        "1e999 | OHM | OUT_OF_RANGE",
        "1e-999 | OHM | OUT_OF_RANGE",
        "1e99999999999 | OHM | OUT_OF_RANGE",
        "2e18 | OHM | OUT_OF_RANGE",
        "1e-31 | OHM | OUT_OF_RANGE",
      })
  void givesTheReasonForWhatItDoesNotRead(String text, String unit, String why) {
    assertThat(QuantityText.parse(text, Unit.valueOf(unit)))
        .isEqualTo(unreadable(Why.valueOf(why)));
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void readsBackEveryPrintedValueToItsThreeDigits(Unit unit) {
    Random random = new Random(unit.name().hashCode());
    for (int i = 0; i < VALUES; i++) {
      double value = Math.exp(random.nextDouble(Math.log(1e-15), Math.log(1e15)));
      double signed = random.nextBoolean() ? value : -value;
      for (String text : List.of(Display.value(signed, unit), Display.reading(signed, unit))) {
        double back = valueOf(QuantityText.parse(text, unit));
        assertThat(back).as(text).isCloseTo(signed, within(HALF_OF_THIRD_DIGIT * value));
        assertThat(Display.reading(back, unit)).isEqualTo(Display.reading(signed, unit));
      }
    }
  }

  @Test
  void readsBackExactlyWhatIsWrittenInFull() {
    Random random = new Random(7);
    for (int i = 0; i < VALUES; i++) {
      double value = random.nextGaussian() * Math.pow(10, random.nextInt(-25, 17));
      assertThat(QuantityText.parse(Double.toString(value), Unit.VOLT))
          .isEqualTo(new Parsed.Value(value));
    }
  }

  @Test
  void neverThrowsAndGivesFiniteValuesOnly() {
    int values = 0;
    for (String text : new Scribble(11).texts(VALUES)) {
      for (Unit unit : Unit.values()) {
        if (QuantityText.parse(text, unit) instanceof Parsed.Value value) {
          assertThat(value.si()).as(text).isFinite();
          values++;
        }
      }
    }
    assertThat(values).as("scribbles that are quantities").isGreaterThan(VALUES / 10);
  }

  @Test
  void turnsAwayAVeryLongTextAtOnce() {
    assertThat(QuantityText.parse("1".repeat(10_000_000), Unit.OHM))
        .isEqualTo(unreadable(Why.NOT_A_NUMBER));
  }

  private static double valueOf(Parsed parsed) {
    assertThat(parsed).isInstanceOf(Parsed.Value.class);
    return ((Parsed.Value) parsed).si();
  }

  private static Parsed unreadable(Why why) {
    return new Parsed.Unreadable(why);
  }
}
