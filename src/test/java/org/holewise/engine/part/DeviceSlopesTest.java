package org.holewise.engine.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.holewise.engine.quantity.Parameter;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The slopes of every device against central differences of its currents. */
@Tag("fast")
class DeviceSlopesTest {
  private static final double THERMAL = Constants.thermalVolts(25);

  /** Differences over 1e-6 lose about half of the digits. */
  private static final double SHARE = 2e-5;

  /** Rounding of the currents' terms over the difference of a microvolt. */
  private static final double ROUNDING = 5e-9;

  /** Terms of an exponential are its slope times about this (V). */
  private static final double BEND = 0.1;

  static Stream<Device> devices() {
    Parameter volts = Parameter.exact("forward", 0.62);
    Parameter gain = Parameter.exact("gain", 200);
    Parameter shift = Parameter.exact("shift", 0.01);
    return Stream.of(
        new DiodeLaw(new Junction(1.6 * THERMAL, 0.6, 1e-3), volts),
        new DiodeLaw(new Junction(THERMAL, 0, 1e-3), volts),
        new ZenerLaw(
            new Junction(1.6 * THERMAL, 0.6, 1e-3),
            new Junction(1.6 * THERMAL, 5, 5e-3),
            volts,
            Parameter.exact("breakdown", 2.4)),
        new WiperLaw(Parameter.exact("ohms", 1e4), Parameter.exact("set", 0.3)),
        new BipolarLaw(1, THERMAL, 1e-14, 4, gain, shift),
        new BipolarLaw(-1, THERMAL, 1e-14, 4, gain, shift),
        new MosfetLaw(1, 0.1, 0.02, Parameter.exact("threshold", 0.1)),
        new MosfetLaw(-1, 0.1, 0, Parameter.exact("threshold", 0.1)),
        new DifferenceLaw(),
        new RegulatorLaw(0.1, 5e-3, Parameter.exact("volts", 0.2)),
        new OpAmpLaw(10, 0.3, 0.1, Parameter.exact("offset", 0.01)),
        new OpAmpLaw(20, 1.4, 0.02, Parameter.exact("offset", -2e-3)),
        new ComparatorLaw(10, 62, 16e-3, Parameter.exact("offset", 0.01)));
  }

  @ParameterizedTest
  @MethodSource("devices")
  void slopesAreThoseOfTheCurrents(Device device) {
    var random = new Random(device.hashCode() % 7);
    for (int draw = 0; draw < 200; draw++) {
      double[] v = random.doubles(device.terminals(), -0.4, 0.4).toArray();
      if (device instanceof ZenerLaw && draw % 2 == 0) {
        v[1] += 2.2;
      }
      if (device.amplifies() && draw % 4 > 0) {
        supply(v, draw % 4);
      }
      check(device, v);
    }
  }

  /** Lets an output's supply be where it comes up (1), in full (2), or its inputs be alike (3). */
  private static void supply(double[] v, int how) {
    v[3] = how == 1 ? v[4] + 1.975 + 0.05 * v[3] : v[3] + 5;
    v[1] = how == 3 ? v[2] + 0.01 * v[1] : v[1];
    v[0] += how == 3 ? 2.5 : 0;
  }

  private static void check(Device device, double[] v) {
    double[] p = device.parameters().stream().mapToDouble(Parameter::nominal).toArray();
    int n = device.terminals();
    double[] i = new double[n];
    double[] dv = new double[n * n];
    double[] dp = new double[n * p.length];
    device.evaluate(v, p, i, dv, dp);
    double size = largest(i) + BEND * largest(dv);
    assertThat(Arrays.stream(i).sum()).isCloseTo(0, within(1e-12 * size));
    for (int t = 0; t < n; t++) {
      double[] by = slope(device, v, p, v, t, 1e-6);
      for (int s = 0; s < n; s++) {
        assertThat(dv[s * n + t]).isCloseTo(by[s], within(SHARE * largest(by) + ROUNDING * size));
      }
    }
    for (int k = 0; k < p.length; k++) {
      double[] by = slope(device, v, p, p, k, 1e-6 * Math.max(p[k], 0.1));
      for (int s = 0; s < n; s++) {
        assertThat(dp[s * p.length + k])
            .isCloseTo(by[s], within(SHARE * largest(by) + ROUNDING * size));
      }
    }
  }

  private static double largest(double[] of) {
    return Arrays.stream(of).map(Math::abs).max().orElse(0);
  }

  /** Central difference of all currents by one entry of v or p. */
  private static double[] slope(
      Device device, double[] v, double[] p, double[] vary, int at, double h) {
    double was = vary[at];
    vary[at] = was + h;
    double[] above = currents(device, v, p);
    vary[at] = was - h;
    double[] below = currents(device, v, p);
    vary[at] = was;
    for (int s = 0; s < above.length; s++) {
      above[s] = (above[s] - below[s]) / (2 * h);
    }
    return above;
  }

  private static double[] currents(Device device, double[] v, double[] p) {
    int n = device.terminals();
    double[] i = new double[n];
    device.evaluate(v, p, i, new double[n * n], new double[n * p.length]);
    return i;
  }

  @ParameterizedTest
  @MethodSource("devices")
  void onlyDifferencesOfVoltageMatter(Device device) {
    double[] p = device.parameters().stream().mapToDouble(Parameter::nominal).toArray();
    double[] v = new Random(3).doubles(device.terminals(), -0.25, 0.25).toArray();
    double[] moved = Arrays.stream(v).map(volts -> volts + 4).toArray();
    double[] one = currents(device, v, p);
    double[] other = currents(device, moved, p);
    for (int t = 0; t < one.length; t++) {
      assertThat(other[t]).isCloseTo(one[t], within(1e-12 * largest(one)));
    }
  }
}
