package org.holewise.engine.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class JunctionTest {
  /** kT/q at 298.15 K and 300 K, computed from the constants of the SI. */
  @Test
  @Published(Family.DIODE)
  void thermalVoltageIsThatOfTheSi() {
    assertThat(Constants.thermalVolts(25) * 1e3).isCloseTo(25.69258, within(5e-6));
    assertThat(Constants.thermalVolts(26.85) * 1e3).isCloseTo(25.85200, within(5e-6));
  }

  private static double amps(Junction junction, double v, double volts) {
    double[] i = new double[1];
    junction.evaluate(v, volts, i, new double[1], new double[1], 0);
    return i[0];
  }

  @Test
  void goesThroughItsPointWithTheResistanceIncluded() {
    for (double series : new double[] {0, 0.05, 3}) {
      var lamp = new Junction(2 * Constants.thermalVolts(25), series, 0.02);
      assertThat(amps(lamp, 2.05, 2.05)).isCloseTo(0.02, within(1e-15));
    }
  }

  @Test
  void carriesNothingAtZeroAndLeaksItsSaturationInReverse() {
    double a = 1.6 * Constants.thermalVolts(25);
    var diode = new Junction(a, 0.6, 1e-3);
    double saturation = 1e-3 / Math.expm1((0.62 - 0.6e-3) / a);
    assertThat(amps(diode, 0, 0.62)).isCloseTo(0, within(1e-14 * saturation));
    assertThat(amps(diode, -5, 0.62)).isCloseTo(-saturation, within(1e-12 * saturation));
  }

  /** I = IS·(exp((v − I·R)/a) − 1), put back into itself. */
  @Test
  void keepsTheLawBehindItsResistance() {
    double a = 2 * Constants.thermalVolts(25);
    var lamp = new Junction(a, 3, 0.02);
    double saturation = 0.02 / Math.expm1((2.05 - 0.06) / a);
    for (double v = 1.5; v < 12; v += 0.25) {
      double i = amps(lamp, v, 2.05);
      double back = 3 * i + a * Math.log1p(i / saturation);
      assertThat(back).isCloseTo(v, within(1e-13 * v));
    }
  }

  /** A breakdown at 200 V has IS of 1e-2100 A, far below what a double holds. */
  @Test
  void doesNotUnderflowAtAHighBreakdown() {
    double a = 1.6 * Constants.thermalVolts(25);
    var breakdown = new Junction(a, 0, 5e-3);
    assertThat(amps(breakdown, 200, 200)).isCloseTo(5e-3, within(1e-14));
    assertThat(amps(breakdown, 200 - a * Math.log(10), 200)).isCloseTo(5e-4, within(1e-14));
    assertThat(amps(breakdown, 100, 200)).isZero();
  }

  @Test
  void doesNotOverflowWhereAnIdealSourceLiesAcrossIt() {
    var diode = new Junction(Constants.thermalVolts(25), 0, 1e-3);
    assertThat(amps(diode, 1000, 0.6)).isPositive().isFinite();
  }

  @Test
  void holdsARiseBackButNeverAFall() {
    var diode = new Junction(Constants.thermalVolts(25), 0, 1e-3);
    double bend = diode.critical(0.6);
    assertThat(diode.limited(9, -5, 0.6)).isEqualTo(bend);
    assertThat(diode.limited(9, bend, 0.6)).isBetween(bend, bend + 0.2);
    assertThat(diode.limited(0.3, 9, 0.6)).isEqualTo(0.3);
    assertThat(diode.limited(-7, 0.6, 0.6)).isEqualTo(-7);
  }
}
