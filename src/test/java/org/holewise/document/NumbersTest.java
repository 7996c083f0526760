package org.holewise.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class NumbersTest {

  @ParameterizedTest
  @CsvSource({
    "2.04, 2.04",
    "0.1234567, 0.123457",
    "0.30000000000000004, 0.3",
    "1234567, 1234570",
    "-0.0, 0",
    "100, 100",
    "1e-9, 0.000000001",
    "-4.7e3, -4700",
    "1.5e12, 1500000000000"
  })
  void keepSixSignificantDigits(double value, String written) {
    assertThat(Numbers.six(value).toPlainString()).isEqualTo(written);
  }

  @Test
  void thatAreNoneAreNotWritten() {
    assertThatThrownBy(() -> Numbers.six(Double.NaN)).isInstanceOf(ArithmeticException.class);
  }
}
