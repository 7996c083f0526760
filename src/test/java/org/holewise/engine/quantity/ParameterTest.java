package org.holewise.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Parameters put to use as in the worked examples of others; JCGM 100 for the sums of squares. */
@Tag("fast")
class ParameterTest {

  /** Bell, Electronic Instrumentation and Measurements, 2nd ed., examples 2-2, 2-3 and 2-4. */
  @Nested
  class WorstCases {

    private final Parameter first = Parameter.within("first", 100, 0.01);
    private final Parameter second = Parameter.within("second", 80, 0.05);

    @Test
    @Published(Family.UNCERTAINTY)
    void addUpInASum() {
      assertThat(first.nominal() + second.nominal()).isEqualTo(180);
      double half = (first.high() + second.high() - first.low() - second.low()) / 2;
      assertThat(half / 180).isCloseTo(0.028, within(0.0005));
    }

    @Test
    @Published(Family.UNCERTAINTY)
    void addUpInADifferenceToo() {
      assertThat(first.nominal() - second.nominal()).isEqualTo(20);
      assertThat(first.high() - second.low() - 20).isCloseTo(0.25 * 20, within(1e-9));
      assertThat(20 - (first.low() - second.high())).isCloseTo(0.25 * 20, within(1e-9));
    }

    @Test
    @Published(Family.UNCERTAINTY)
    void countTwiceForASquare() {
      Parameter ohms = Parameter.within("ohms", 820, 0.1);
      double fullScale = 25e-3;
      Parameter amps = new Parameter("amps", 10e-3, new Spread.Limit(0.02 * fullScale));
      double watts = amps.nominal() * amps.nominal() * ohms.nominal();
      double bySensitivities =
          2 * amps.nominal() * ohms.nominal() * (amps.high() - amps.nominal())
              + amps.nominal() * amps.nominal() * (ohms.high() - ohms.nominal());
      assertThat(watts).isCloseTo(82e-3, within(1e-9));
      assertThat(bySensitivities / watts).isCloseTo(0.20, within(1e-9));
    }
  }

  /** 9 V exact across 10 kΩ and 10 kΩ of 5 %; expected values by arithmetic and 400,000 draws. */
  @Nested
  class EqualDivider {

    private static final int DRAWS = 2000;

    private final Parameter volts = Parameter.exact("B1.volts", 9);
    private final Parameter upper = Parameter.within("R1.ohms", 10e3, 0.05);
    private final Parameter lower = Parameter.within("R2.ohms", 10e3, 0.05);

    @Test
    @Published(Family.UNCERTAINTY)
    void hasItsWorstCasesAtTheLimits() {
      assertThat(output(upper.high(), lower.low())).isCloseTo(4.275, within(1e-12));
      assertThat(output(upper.low(), lower.high())).isCloseTo(4.725, within(1e-12));
    }

    @Test
    @Published(Family.UNCERTAINTY)
    void combinesItsDeviationsBySensitivities() {
      assertThat(combined()).isCloseTo(0.0919, within(0.00005));
      assertThat(combined() * Math.sqrt(3)).isCloseTo(0.159, within(0.0005));
    }

    @Test
    @Published(Family.UNCERTAINTY)
    void drawsToTheKnownQuantiles() {
      double[] distances = new double[DRAWS];
      // Points of low discrepancy: fractions of the powers of the plastic number, the real root of
      // x³ = x + 1, fill the unit square evenly; 0.003 is what 2000 of them leave open at 99 %.
      double root = 1.3247179572447460;
      for (int i = 0; i < DRAWS; i++) {
        double u = (0.5 + (i + 1) / root) % 1;
        double v = (0.5 + (i + 1) / (root * root)) % 1;
        distances[i] = Math.abs(output(upper.at(u), lower.at(v)) - 4.5);
      }
      Arrays.sort(distances);
      assertThat(distances[DRAWS * 95 / 100]).isCloseTo(0.1747, within(0.002));
      assertThat(distances[DRAWS * 99 / 100]).isCloseTo(0.2025, within(0.003));
      assertThat(distances[DRAWS - 1]).isBetween(0.21, 0.225);
      double squares = Arrays.stream(distances).map(d -> d * d).sum();
      assertThat(Math.sqrt(squares / DRAWS)).isCloseTo(0.0919, within(0.0005));
    }

    /** Read as 4.50 V on the 20 V range of 2000 counts: 0.5 % and 2 digits of 10 mV. */
    @Test
    @Published(Family.UNCERTAINTY)
    void widensByTheMetersLimit() {
      Parameter meter = new Parameter("meter", 0, new Spread.Limit(0.005 * 4.50 + 2 * 0.01));
      assertThat(meter.high()).isCloseTo(0.0425, within(1e-12));
      double both = Math.hypot(combined(), meter.deviation());
      assertThat(both).isCloseTo(0.0951, within(0.00005));
      assertThat(2 * both).isCloseTo(0.190, within(0.0005));
    }

    private double combined() {
      double sum = upper.nominal() + lower.nominal();
      double perOhmUpper = -volts.nominal() * lower.nominal() / (sum * sum);
      double perOhmLower = volts.nominal() * upper.nominal() / (sum * sum);
      return Math.hypot(perOhmUpper * upper.deviation(), perOhmLower * lower.deviation());
    }

    private double output(double above, double below) {
      return volts.nominal() * below / (above + below);
    }
  }
}
