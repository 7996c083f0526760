package org.holewise.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class SpreadTest {

  private static final double NOMINAL = 200;

  static Stream<Spread> spreads() {
    return Stream.of(
        new Spread.Limit(10),
        new Spread.Normal(5),
        new Spread.LogNormal(0.05),
        new Spread.LogUniform(10, 10_000));
  }

  /**
   * P 0.25, 0.001 and 1e-20 are the test values of Wichura 1988 (AS 241; from memory); the others
   * stand in any table of the normal distribution.
   */
  @ParameterizedTest
  @CsvSource({
    "0.5, 0",
    "0.25, -0.6744897501960817",
    "0.75, 0.6744897501960817",
    "0.975, 1.959963984540054",
    "0.95, 1.6448536269514722",
    "0.99, 2.3263478740408408",
    "0.001, -3.090232306167814",
    "1e-20, -9.262340089798408",
  })
  @Published(Family.UNCERTAINTY)
  void findsTheQuantilesOfTheNormalDistribution(double u, double z) {
    assertThat(NormalQuantile.of(u)).isCloseTo(z, within(1e-14 * Math.max(1, Math.abs(z))));
  }

  /** The density of the draws must be the family's own: their moments are its deviation. */
  @ParameterizedTest
  @MethodSource("spreads")
  void hasTheDeviationOfItsOwnQuantiles(Spread spread) {
    int points = 200_000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < points; i++) {
      double x = spread.at(NOMINAL, (i + 0.5) / points) - NOMINAL;
      sum += x;
      squares += x * x;
    }
    double mean = sum / points;
    double deviation = Math.sqrt(squares / points - mean * mean);
    // 0.5 %: the log-normal one is stated to first order, 0.19 % low at 5 %
    assertThat(spread.deviation(NOMINAL)).isCloseTo(deviation, Percentage.withPercentage(0.5));
  }

  @ParameterizedTest
  @MethodSource("spreads")
  void risesWithProbabilityFromWorstCaseToWorstCase(Spread spread) {
    double before = Double.NEGATIVE_INFINITY;
    // from 0.2 % to 99.8 %, which a normal distribution reaches inside three deviations
    for (int i = 2; i < 999; i++) {
      double x = spread.at(NOMINAL, i / 1000.0);
      assertThat(x).isGreaterThan(before);
      assertThat(x).isBetween(spread.low(NOMINAL), spread.high(NOMINAL));
      before = x;
    }
  }

  @Test
  void takesLimitsAsWorstCaseAndElseThreeDeviations() {
    assertThat(new Spread.Limit(10).low(NOMINAL)).isEqualTo(190);
    assertThat(new Spread.Limit(10).high(NOMINAL)).isEqualTo(210);
    assertThat(new Spread.Normal(5).low(NOMINAL)).isEqualTo(185);
    assertThat(new Spread.Normal(5).high(NOMINAL)).isEqualTo(215);
    assertThat(new Spread.LogNormal(0.35).low(NOMINAL)).isCloseTo(69.98754982, within(1e-8));
    assertThat(new Spread.LogNormal(0.35).high(NOMINAL)).isCloseTo(571.5302236, within(1e-7));
    assertThat(new Spread.LogUniform(10, 1e4).low(NOMINAL)).isEqualTo(10);
    assertThat(new Spread.LogUniform(10, 1e4).high(NOMINAL)).isEqualTo(1e4);
  }

  @Test
  void putsTheMedianWhereItBelongs() {
    assertThat(new Spread.Limit(10).at(NOMINAL, 0.5)).isEqualTo(NOMINAL);
    assertThat(new Spread.Normal(5).at(NOMINAL, 0.5)).isEqualTo(NOMINAL);
    assertThat(new Spread.LogNormal(0.35).at(NOMINAL, 0.5)).isEqualTo(NOMINAL);
    // the geometric mean of 10 Ω and 10 kΩ
    assertThat(new Spread.LogUniform(10, 1e4).at(NOMINAL, 0.5))
        .isCloseTo(Math.sqrt(1e5), within(1e-9));
  }

  @Test
  void leavesAnExactValueAlone() {
    Parameter exact = Parameter.exact("B1.volts", 9);
    assertThat(exact.deviation()).isZero();
    assertThat(exact.low()).isEqualTo(9);
    assertThat(exact.high()).isEqualTo(9);
    assertThat(exact.at(0.01)).isEqualTo(9);
    assertThat(exact.withNominal(6).at(0.99)).isEqualTo(6);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, -0.1, Double.NaN})
  void drawsOnlyInsideZeroAndOne(double u) {
    assertThat(Stream.concat(spreads(), Stream.of(new Spread.Exact())))
        .allSatisfy(
            spread ->
                assertThatThrownBy(() -> spread.at(NOMINAL, u))
                    .isInstanceOf(IllegalArgumentException.class));
  }

  @Test
  void refusesSizesThatAreNone() {
    assertThatThrownBy(() -> new Spread.Limit(-1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Spread.Normal(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Spread.LogNormal(-0.1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Spread.LogUniform(0, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Parameter.exact("R1.ohms", Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("R1.ohms");
  }
}
