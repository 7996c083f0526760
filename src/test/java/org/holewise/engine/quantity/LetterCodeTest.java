package org.holewise.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.Random;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class LetterCodeTest {

  /** IEC 60062 as shown in Kuphaldt, Lessons in Electric Circuits, reference volume, ch. 2. */
  @ParameterizedTest
  @CsvSource({
    "R47, 0.47",
    "4R7, 4.7",
    "470R, 470",
    "4K7, 4700",
    "47K, 47000",
    "47K3, 47300",
    "4M7, 4700000"
  })
  @Published(Family.CODE)
  void readsTheBooksExamples(String code, double ohms) {
    assertThat(LetterCode.read(code))
        .contains(new CodedValue(ohms, Unit.OHM, OptionalDouble.empty()));
  }

  /** The tolerance letters of IEC 60062; the first two rows are the same book's examples. */
  @ParameterizedTest
  @CsvSource({
    "1R8J, 1.8, 0.05",
    "27KK, 27000, 0.1",
    "1R8B, 1.8, 0.001",
    "1R8C, 1.8, 0.0025",
    "1R8D, 1.8, 0.005",
    "1R8F, 1.8, 0.01",
    "1R8G, 1.8, 0.02",
    "1R8K, 1.8, 0.1",
    "1R8M, 1.8, 0.2",
  })
  @Published(Family.CODE)
  void readsTheToleranceLetter(String code, double ohms, double tolerance) {
    assertThat(LetterCode.read(code))
        .contains(new CodedValue(ohms, Unit.OHM, OptionalDouble.of(tolerance)));
  }

  @ParameterizedTest
  @CsvSource({
    "47M, 47e6, 0",
    "4M7, 4.7e6, 0",
    "4M7M, 4.7e6, 0.2",
    "10MM, 10e6, 0.2",
    "1R8M, 1.8, 0.2"
  })
  void tellsMegaFromTwentyPerCentByItsPlace(String code, double ohms, double tolerance) {
    CodedValue value = LetterCode.read(code).orElseThrow();
    assertThat(value.value()).isEqualTo(ohms);
    assertThat(value.tolerance().orElse(0)).isEqualTo(tolerance);
  }

  @ParameterizedTest
  @CsvSource({"2u2, 2.2e-6", "2\u00b52, 2.2e-6", "100n, 100e-9", "p47, 0.47e-12", "1m5, 1.5e-3"})
  void readsCapacitors(String code, double farads) {
    assertThat(LetterCode.read(code))
        .contains(new CodedValue(farads, Unit.FARAD, OptionalDouble.empty()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "470", "R", "K", "KK", "4.7k", "4K7X", "4K7JJ", "-4K7", "12345R", "4 K7"})
  void isEmptyForWhatIsNoCode(String text) {
    assertThat(LetterCode.read(text)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "4700, OHM, 4K7",
    "47300, OHM, 47K3",
    "470, OHM, 470R",
    "0.47, OHM, R47",
    "0.1, OHM, R10",
    "1, OHM, 1R0",
    "1000, OHM, 1K0",
    "10000, OHM, 10K",
    "2.2e-6, FARAD, 2\u00b52",
    "1e-7, FARAD, 100n",
    "0.47e-12, FARAD, p47",
  })
  void printsWithAtLeastTwoFigures(double value, Unit unit, String code) {
    assertThat(LetterCode.print(value, unit)).contains(code);
  }

  @ParameterizedTest
  @CsvSource({
    "12345, OHM",
    "0, OHM",
    "-1, OHM",
    "NaN, OHM",
    "Infinity, OHM",
    "1e-9, OHM",
    "1e15, OHM",
    "5, VOLT"
  })
  void printsNothingThatItCouldNotReadBack(double value, Unit unit) {
    assertThat(LetterCode.print(value, unit)).isEmpty();
  }

  @Test
  void readsBackEveryCodeThatItPrints() {
    Random random = new Random(3);
    for (int i = 0; i < 10_000; i++) {
      Unit unit = random.nextBoolean() ? Unit.OHM : Unit.FARAD;
      int power = unit == Unit.OHM ? random.nextInt(-2, 7) : random.nextInt(-13, -4);
      double value = Double.parseDouble(random.nextInt(1, 1000) + "e" + power);
      String code = LetterCode.print(value, unit).orElseThrow();
      assertThat(LetterCode.read(code))
          .as(code)
          .contains(new CodedValue(value, unit, OptionalDouble.empty()));
      assertThat(QuantityText.parse(code, unit)).isEqualTo(new Parsed.Value(value));
    }
  }
}
