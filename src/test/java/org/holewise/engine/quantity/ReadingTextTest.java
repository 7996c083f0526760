package org.holewise.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.holewise.engine.quantity.Parsed.Why;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class ReadingTextTest {

  /** Full scale of the largest volts range of a hand meter with 2000 counts (V). */
  private static final double FULL_SCALE = 200;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5.97 V | VOLT | 5.97",
        "2.04 v | VOLT | 2.04",
        "2.04V | VOLT | 2.04",
        "2,04 V | VOLT | 2.04",
        "2.04 volts | VOLT | 2.04",
        "2.04 V DC | VOLT | 2.04",
        "2.04 VDC | VOLT | 2.04",
        "2.04 Vdc | VOLT | 2.04",
        "620 mV | VOLT | 0.62",
        "620 mv | VOLT | 0.62",
        "1.000 V | VOLT | 1",
        "0,620 V | VOLT | 0.62",
        "1,0000 V | VOLT | 1",
        "-1.80 V | VOLT | -1.8",
        "\u22121.80 V | VOLT | -1.8",
        "-0.00 V | VOLT | 0",
        "9.9 mA | AMP | 0.0099",
        "9.9 ma | AMP | 0.0099",
        "9.9 mADC | AMP | 0.0099",
        "9.9 m | AMP | 0.0099",
        "9.9 milliamps | AMP | 0.0099",
        "9.9 MILLIAMPS | AMP | 0.0099",
        "9.9 milli amps | AMP | 0.0099",
        "250 uA | AMP | 2.5e-4",
        "250 \u00b5A | AMP | 2.5e-4",
        "0.5 A | AMP | 0.5",
        "0.5 amp | AMP | 0.5",
        "470 ohms | OHM | 470",
        "470 Ω | OHM | 470",
        "470 r | OHM | 470",
        "4.7 k | OHM | 4700",
        "4.7 kohm | OHM | 4700",
        "4.7 KOhm | OHM | 4700",
        "4k7 | OHM | 4700",
        "1.2 M | OHM | 1200000",
        "1.2 MΩ | OHM | 1200000",
        "1.2 megohms | OHM | 1200000",
        "12 milliohms | OHM | 0.012",
        "1.5 kHz | HERTZ | 1500",
        "2 MHz | HERTZ | 2000000",
        "32 dB | DECIBEL | 32",
        "40 | COUNT | 40",
      })
  void readsWhatIsClear(String text, Unit unit, double expected) {
    assertThat(read(text, unit)).isEqualTo(new ReadingText.Value(expected));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | VOLT | EMPTY",
        "'  ' | VOLT | EMPTY",
        "lit | VOLT | NOT_A_NUMBER",
        "about 5 V | VOLT | NOT_A_NUMBER",
        "2.04 A | VOLT | WRONG_UNIT",
        "9.9 mV | AMP | WRONG_UNIT",
        "470 Ω | VOLT | WRONG_UNIT",
        "2.04 V AC | VOLT | WRONG_UNIT",
        "1,000 | VOLT | AMBIGUOUS_SEPARATOR",
        "1,000 V | VOLT | AMBIGUOUS_SEPARATOR",
        "12,345 | OHM | AMBIGUOUS_SEPARATOR",
        "470,000 ohm | OHM | AMBIGUOUS_SEPARATOR",
        "'1,000.5 V' | VOLT | AMBIGUOUS_SEPARATOR",
        "'1.000,5 V' | VOLT | AMBIGUOUS_SEPARATOR",
        "1 000 V | VOLT | AMBIGUOUS_SEPARATOR",
        "9.9 MA | AMP | CASE_UNCLEAR",
        "9.9 M | AMP | CASE_UNCLEAR",
        "620 MV | VOLT | CASE_UNCLEAR",
        "1.2 mΩ | OHM | CASE_UNCLEAR",
        "1.2 mohm | OHM | CASE_UNCLEAR",
        "1.2 m | OHM | CASE_UNCLEAR",
        "2 mhz | HERTZ | CASE_UNCLEAR",
        "1e30 V | VOLT | OUT_OF_RANGE",
      })
  void asksWhereItWouldHaveToGuess(String text, Unit unit, Why why) {
    assertThat(read(text, unit)).isEqualTo(new ReadingText.Unreadable(why));
  }

  @ParameterizedTest
  @CsvSource({
    "2.04, VOLT, true",
    "-2.04, VOLT, true",
    "0.62, VOLT, true",
    "5.97 DC, VOLT, true",
    "199.90, VOLT, true",
    "0.00, VOLT, true",
    "0, AMP, true",
    "0.0, OHM, true",
    "1, VOLT, false",
    "5, VOLT, false",
    "1.5, VOLT, false",
    "620, VOLT, false",
    "0.05, VOLT, false",
    "200.10, VOLT, false",
    "9.9, AMP, false",
    "0.01, AMP, false",
    "4.70, OHM, false",
    "390, OHM, false",
    "50, HERTZ, false",
    "32, DECIBEL, false",
  })
  void takesABareNumberOnlyWhereItsMagnitudeSettlesTheUnit(
      String text, Unit unit, boolean settled) {
    ReadingText.Result result = read(text, unit);
    if (settled) {
      assertThat(result).isInstanceOf(ReadingText.Value.class);
    } else {
      assertThat(result).isEqualTo(new ReadingText.Unreadable(Why.UNIT_NEEDED));
    }
  }

  @Test
  void settlesNoBareVoltsAboveTheFullScaleOfThatMeter() {
    assertThat(ReadingText.parse("12.00", Unit.VOLT, 20)).isEqualTo(new ReadingText.Value(12));
    assertThat(ReadingText.parse("12.00", Unit.VOLT, 10))
        .isEqualTo(new ReadingText.Unreadable(Why.UNIT_NEEDED));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"OL", "ol", "0L", "0l", "O.L", "0.L", "-OL", "\u2212 0L", " OL ", "OL MΩ"})
  void takesOverRangeAsAReadingOfItsOwn(String text) {
    assertThat(read(text, Unit.OHM)).isEqualTo(new ReadingText.OverRange());
  }

  @ParameterizedTest
  @CsvSource({"OL V, WRONG_UNIT", "old, NOT_A_NUMBER", "1 ., WRONG_UNIT", "L, NOT_A_NUMBER"})
  void takesNothingElseForOverRange(String text, Why why) {
    assertThat(read(text, Unit.OHM)).isEqualTo(new ReadingText.Unreadable(why));
  }

  @Test
  void neverThrowsAndAgreesWithTheReaderOfDocumentsWhereItReads() {
    int values = 0;
    for (String text : new Scribble(13).texts(10_000)) {
      boolean direct = text.toLowerCase(Locale.ROOT).contains("dc");
      for (Unit unit : Unit.values()) {
        if (read(text, unit) instanceof ReadingText.Value value && !direct) {
          assertThat(QuantityText.parse(text, unit)).isEqualTo(new Parsed.Value(value.si()));
          values++;
        }
      }
    }
    assertThat(values).as("scribbles that are readings").isGreaterThan(500);
  }

  private static ReadingText.Result read(String text, Unit unit) {
    return ReadingText.parse(text, unit, FULL_SCALE);
  }
}
