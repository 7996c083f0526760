package org.holewise.engine.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.correlation.Covariance;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Spread;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * JCGM 100, H.2 (from memory, recomputed): a resistance, a reactance and an impedance from five
 * observations of volts, milliamperes and a phase that hang together. What is observed is written
 * as a sum of three independent numbers, by the triangular factor of its covariances; the library
 * for both is Apache Commons Math.
 */
@Tag("fast")
class GuideExampleTest {
  private static final double[][] OBSERVED = {
    {5.007, 19.663e-3, 1.0456},
    {4.994, 19.639e-3, 1.0438},
    {5.005, 19.640e-3, 1.0468},
    {4.990, 19.685e-3, 1.0428},
    {4.999, 19.678e-3, 1.0433}
  };

  private final double volts = mean(0);
  private final double amps = mean(1);
  private final double phase = mean(2);
  private final double resistance = volts / amps * Math.cos(phase);
  private final double reactance = volts / amps * Math.sin(phase);
  private final double impedance = volts / amps;

  private final RealMatrix factor =
      new CholeskyDecomposition(
              new Covariance(new Array2DRowRealMatrix(OBSERVED))
                  .getCovarianceMatrix()
                  .scalarMultiply(1.0 / OBSERVED.length),
              1e-12,
              0)
          .getL();

  private final Uncertainty uncertainty =
      Uncertainty.of(
          Stream.of("one", "two", "three")
              .map(name -> new Parameter(name, 0, new Spread.Normal(1)))
              .toList(),
          Meters.named("hand-2000").orElseThrow());

  private static double mean(int column) {
    return Stream.of(OBSERVED).mapToDouble(row -> row[column]).average().orElseThrow();
  }

  /** A number that no meter's error adds to, by its slopes by volts, amperes and phase. */
  private Forecast of(double value, double... slopes) {
    return new Forecast(
        Forecast.Sort.LAMP, Function.AMPS, value, factor.preMultiply(slopes), false, 0);
  }

  private Forecast resistance() {
    return of(resistance, resistance / volts, -resistance / amps, -reactance);
  }

  private Forecast reactance() {
    return of(reactance, reactance / volts, -reactance / amps, resistance);
  }

  private Forecast impedance() {
    return of(impedance, impedance / volts, -impedance / amps, 0);
  }

  private double correlation(Forecast one, Forecast other) {
    return uncertainty.covariance(one, other)
        / Math.sqrt(uncertainty.variance(one) * uncertainty.variance(other));
  }

  @Test
  @Published(Family.UNCERTAINTY)
  void whatIsObservedHangsTogether() {
    List<Forecast> observed = List.of(of(volts, 1, 0, 0), of(amps, 0, 1, 0), of(phase, 0, 0, 1));
    assertThat(correlation(observed.get(0), observed.get(1))).isCloseTo(-0.36, within(0.005));
    assertThat(correlation(observed.get(0), observed.get(2))).isCloseTo(0.86, within(0.005));
    assertThat(correlation(observed.get(1), observed.get(2))).isCloseTo(-0.65, within(0.005));
  }

  @Test
  @Published(Family.UNCERTAINTY)
  void resultsHaveTheGuidesUncertainties() {
    assertThat(resistance().value()).isCloseTo(127.732, within(1e-3));
    assertThat(Math.sqrt(uncertainty.variance(resistance()))).isCloseTo(0.071, within(1e-3));
    assertThat(reactance().value()).isCloseTo(219.847, within(1e-3));
    assertThat(Math.sqrt(uncertainty.variance(reactance()))).isCloseTo(0.295, within(1e-3));
    assertThat(impedance().value()).isCloseTo(254.260, within(1e-3));
    assertThat(Math.sqrt(uncertainty.variance(impedance()))).isCloseTo(0.236, within(1e-3));
  }

  /** The guide's table H.4 (from memory). */
  @Test
  @Published(Family.UNCERTAINTY)
  void resultsHangTogetherAsTheGuideHasIt() {
    assertThat(correlation(resistance(), reactance())).isCloseTo(-0.588, within(1e-3));
    assertThat(correlation(resistance(), impedance())).isCloseTo(-0.485, within(1e-3));
    assertThat(correlation(reactance(), impedance())).isCloseTo(0.993, within(1e-3));
  }
}
