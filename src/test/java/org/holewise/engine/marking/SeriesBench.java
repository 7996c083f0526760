package org.holewise.engine.marking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A battery and two resistors in a row, each lead in one of four strips: a solver of nine equations
 * and faults made by hand, sharing nothing with the engine's. Every voltage goes with the
 * battery's, so that it is one volt here.
 */
final class SeriesBench {
  /** Leads in the order of the exercise: B1.+ B1.- R1.1 R1.2 R2.1 R2.2. */
  static final int LEADS = 6;

  /** Strips of columns 10, 15 and 20, and one that nothing else is in. */
  static final int STRIPS = 4;

  private static final int NODES = STRIPS + LEADS;
  private static final int[] STRIP = {0, 2, 0, 1, 1, 2};

  /** What good contacts and short wires are (Ω), and what insulates (S). */
  private static final double GOOD = 1e-6;

  private static final double LEAK = 1e-11;
  private static final double METER = 1e7;
  private static final double INTERNAL = 1;

  /** Leads that the three readings are across, red first. */
  private static final int[][] ACROSS = {{0, 1}, {2, 3}, {4, 5}};

  final int[] strip = STRIP.clone();
  final double[] contact = new double[LEADS];
  double r1;
  double r2;

  private record Joined(int one, int other, double siemens) {}

  private final List<Joined> joined = new ArrayList<>();

  SeriesBench(double r1, double r2) {
    Arrays.fill(contact, GOOD);
    this.r1 = r1;
    this.r2 = r2;
  }

  static int node(int lead) {
    return STRIPS + lead;
  }

  void join(int one, int other, double ohms) {
    joined.add(new Joined(one, other, 1 / ohms));
  }

  /** What a voltmeter shows of each reading for a battery of one volt. */
  double[] readings() {
    double[] shown = new double[ACROSS.length];
    for (int k = 0; k < shown.length; k++) {
      double[] volts = solved(node(ACROSS[k][0]), node(ACROSS[k][1]));
      shown[k] = volts[node(ACROSS[k][0])] - volts[node(ACROSS[k][1])];
    }
    return shown;
  }

  /** Node voltages with a meter across two nodes, the battery's minus being zero. */
  private double[] solved(int red, int black) {
    double[][] a = new double[NODES][NODES + 1];
    for (int lead = 0; lead < LEADS; lead++) {
      between(a, node(lead), strip[lead], 1 / contact[lead]);
    }
    between(a, node(2), node(3), 1 / r1);
    between(a, node(4), node(5), 1 / r2);
    between(a, node(0), node(1), 1 / INTERNAL);
    between(a, red, black, 1 / METER);
    joined.forEach(one -> between(a, one.one, one.other, one.siemens));
    a[node(0)][NODES] += 1 / INTERNAL;
    a[node(1)][NODES] -= 1 / INTERNAL;
    for (int i = 0; i < NODES; i++) {
      a[i][i] += i == node(1) ? 1e6 : LEAK;
    }
    return eliminated(a);
  }

  private static void between(double[][] a, int one, int other, double siemens) {
    a[one][one] += siemens;
    a[other][other] += siemens;
    a[one][other] -= siemens;
    a[other][one] -= siemens;
  }

  /** By Gauss's elimination; the matrix is diagonally dominant, so that nothing is exchanged. */
  private static double[] eliminated(double[][] a) {
    int n = a.length;
    for (int k = 0; k < n; k++) {
      for (int i = k + 1; i < n; i++) {
        if (a[i][k] != 0) {
          double factor = a[i][k] / a[k][k];
          for (int j = k; j <= n; j++) {
            a[i][j] -= factor * a[k][j];
          }
        }
      }
    }
    double[] x = new double[n];
    for (int i = n - 1; i >= 0; i--) {
      double sum = a[i][n];
      for (int j = i + 1; j < n; j++) {
        sum -= a[i][j] * x[j];
      }
      x[i] = sum / a[i][i];
    }
    return x;
  }
}
