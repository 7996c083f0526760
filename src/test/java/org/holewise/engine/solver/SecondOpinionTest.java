package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.complex.ComplexField;
import org.apache.commons.math3.linear.Array2DRowFieldMatrix;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayFieldVector;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.FieldLUDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Circuits at random once more: node equations written here, from the parts as they are drawn, and
 * solved by a library of others, Apache Commons Math. Net 0 is the reference.
 */
@Tag("law")
class SecondOpinionTest {
  private static final int DRAWS = Integer.getInteger("holewise.opinion.draws", 400);

  /** Digits that are left of sixteen where conductances differ by a million. */
  private static final double SHARE = 1e-9;

  private static final double VOLTMETER = 10e6;
  private static final double AMMETER = 10;

  private static double logUniform(Random random, double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  /** A part between two nets: volts behind ohms; 0 Ω for an ideal source, 0 V for a resistor. */
  private record Branch(String ref, int a, int b, double volts, double ohms) {

    String row() {
      return volts > 0
          ? row("%s battery n%d n%d volts=%.17g internal=%.17g", volts, ohms)
          : row("%s resistor n%d n%d ohms=%.17g", ohms);
    }

    private String row(String form, Object... values) {
      var all = new ArrayList<Object>(List.of(ref, a, b));
      all.addAll(List.of(values));
      return String.format(Locale.ROOT, form, all.toArray());
    }
  }

  /** A tree over all nets, ideal sources among it, and more resistors and batteries across it. */
  private static List<Branch> branches(Random random) {
    int nets = 3 + random.nextInt(20);
    var branches = new ArrayList<Branch>();
    for (int k = 1; k < nets; k++) {
      boolean source = k == 1 || random.nextInt(5) == 0;
      double ohms = logUniform(random, 10, 1e6);
      branches.add(
          source
              ? new Branch("B" + k, k, random.nextInt(k), 0.5 + 20 * random.nextDouble(), 0)
              : new Branch("R" + k, k, random.nextInt(k), 0, ohms));
    }
    int more = nets + random.nextInt(nets);
    for (int k = nets; k < nets + more; k++) {
      int a = random.nextInt(nets);
      int b = (a + 1 + random.nextInt(nets - 1)) % nets;
      branches.add(
          random.nextInt(6) == 0
              ? new Branch("B" + k, a, b, 0.5 + 20 * random.nextDouble(), logUniform(random, 1, 50))
              : new Branch("R" + k, a, b, 0, logUniform(random, 10, 1e6)));
    }
    return branches;
  }

  /** Conductances between the nets and the laws of ideal sources; net 0 has no row. */
  private static final class RealEquations {
    private final double[][] matrix;
    private final double[] right;
    private int source;

    RealEquations(int nets, int sources) {
      matrix = new double[nets - 1 + sources][nets - 1 + sources];
      right = new double[nets - 1 + sources];
      source = nets - 1;
    }

    void add(Branch branch) {
      int[] at = {branch.a() - 1, branch.b() - 1};
      for (int s = 0; s < 2; s++) {
        int sign = s == 0 ? 1 : -1;
        if (at[s] < 0) {
          continue;
        }
        if (branch.ohms() == 0) {
          matrix[source][at[s]] = sign;
          matrix[at[s]][source] = sign;
          continue;
        }
        right[at[s]] += sign * branch.volts() / branch.ohms();
        matrix[at[s]][at[s]] += 1 / branch.ohms();
        if (at[1 - s] >= 0) {
          matrix[at[s]][at[1 - s]] -= 1 / branch.ohms();
        }
      }
      if (branch.ohms() == 0) {
        right[source++] = branch.volts();
      }
    }

    double[] solved() {
      return new LUDecomposition(new Array2DRowRealMatrix(matrix, false), 0)
          .getSolver()
          .solve(new ArrayRealVector(right, false))
          .toArray();
    }
  }

  private static double volts(double[] nets, int net) {
    return net == 0 ? 0 : nets[net - 1];
  }

  @Test
  void resistorsSourcesAndMeters() {
    int compared = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      var random = new Random(draw);
      List<Branch> branches = branches(random);
      int nets = 1 + branches.stream().mapToInt(b -> Math.max(b.a(), b.b())).max().orElseThrow();
      Rows rows = Rows.of(String.join(";", branches.stream().map(Branch::row).toList()));
      var resistors = branches.stream().filter(b -> b.volts() == 0).toList();
      Branch broken = resistors.get(random.nextInt(resistors.size()));
      Branch meter = new Branch("V", random.nextInt(nets), random.nextInt(nets), 0, VOLTMETER);
      var edits =
          new ArrayList<Edit>(List.of(new Edit.InSeries(Rows.lead(broken.ref() + ".1"), AMMETER)));
      var opinion =
          new RealEquations(nets, (int) branches.stream().filter(b -> b.ohms() == 0).count());
      for (Branch branch : branches) {
        double more = branch == broken ? AMMETER : 0;
        opinion.add(
            new Branch(branch.ref(), branch.a(), branch.b(), branch.volts(), branch.ohms() + more));
      }
      if (meter.a() != meter.b()) {
        opinion.add(meter);
        edits.add(new Edit.Across(rows.at("n" + meter.a()), rows.at("n" + meter.b()), VOLTMETER));
      }
      OperatingPoint point = Rows.solved(rows.circuit().with(edits));
      double[] volts = opinion.solved();
      double most =
          IntStream.range(0, nets)
              .mapToDouble(net -> Math.abs(volts(volts, net)))
              .max()
              .orElseThrow();
      for (int net = 0; net < nets; net++) {
        assertThat(point.volts(rows.at("n" + net), rows.at("n0")))
            .as("draw %d net %d", draw, net)
            .isCloseTo(volts(volts, net), within(SHARE * most));
      }
      double amps =
          (volts(volts, broken.a()) - volts(volts, broken.b())) / (broken.ohms() + AMMETER);
      assertThat(point.current(Rows.lead(broken.ref() + ".1")))
          .as("draw %d, %s", draw, broken)
          .isCloseTo(amps, within(SHARE * most / broken.ohms()));
      compared++;
    }
    assertThat(compared).isEqualTo(DRAWS);
  }

  /** A part of a ladder: its row, and its admittance at a frequency. */
  private record Rung(String ref, char kind, int a, int b, double value, double series) {

    String row() {
      String form =
          switch (kind) {
            case 'R' -> "%s resistor n%d n%d ohms=%.17g";
            case 'C' -> "%s capacitor n%d n%d farads=%.17g";
            default -> "%s inductor n%d n%d henries=%.17g series=%.17g";
          };
      return String.format(Locale.ROOT, form, ref, a, b, value, series);
    }

    Complex siemens(double hertz) {
      double omega = 2 * Math.PI * hertz;
      return switch (kind) {
        case 'R' -> new Complex(1 / value);
        case 'C' -> new Complex(0, omega * value);
        default -> new Complex(series, omega * value).reciprocal();
      };
    }
  }

  private static Rung rung(Random random, int number, int a, int b) {
    char kind = "RLC".charAt(random.nextInt(3));
    double value =
        switch (kind) {
          case 'R' -> logUniform(random, 10, 1e5);
          case 'C' -> logUniform(random, 1e-10, 1e-5);
          default -> logUniform(random, 1e-5, 1);
        };
    return new Rung("" + kind + number, kind, a, b, value, logUniform(random, 0.01, 100));
  }

  /** Rungs and rails of R, L or C; 1 MΩ at every net, lest one hang in the air at rest. */
  private static List<Rung> ladder(Random random) {
    int sections = 1 + random.nextInt(8);
    var rungs = new ArrayList<Rung>();
    for (int k = 1; k <= sections; k++) {
      rungs.add(rung(random, 3 * k, k, k + 1));
      rungs.add(rung(random, 3 * k + 1, k + 1, 0));
      rungs.add(new Rung("R" + (3 * k + 2), 'R', k + 1, 0, 1e6, 0));
      if (k > 1 && random.nextInt(4) == 0) {
        rungs.add(rung(random, 100 + k, k - 1, k + 1));
      }
    }
    return rungs;
  }

  /** Phasors of the nets from 1 on, 1 V behind the generator's resistance at net 1. */
  private static Complex[] opinion(List<Rung> rungs, double output, double hertz) {
    int nets = rungs.stream().mapToInt(Rung::b).max().orElseThrow();
    nets = Math.max(nets, rungs.stream().mapToInt(Rung::a).max().orElseThrow());
    var matrix = new Array2DRowFieldMatrix<>(ComplexField.getInstance(), nets, nets);
    var right = new ArrayFieldVector<>(ComplexField.getInstance(), nets);
    matrix.addToEntry(0, 0, new Complex(1 / output));
    right.setEntry(0, new Complex(1 / output));
    for (Rung rung : rungs) {
      Complex siemens = rung.siemens(hertz);
      matrix.addToEntry(rung.a() - 1, rung.a() - 1, siemens);
      if (rung.b() > 0) {
        matrix.addToEntry(rung.b() - 1, rung.b() - 1, siemens);
        matrix.addToEntry(rung.a() - 1, rung.b() - 1, siemens.negate());
        matrix.addToEntry(rung.b() - 1, rung.a() - 1, siemens.negate());
      }
    }
    return new FieldLUDecomposition<>(matrix).getSolver().solve(right).toArray();
  }

  @Test
  void laddersOfResistorsCoilsAndCapacitors() {
    for (int draw = 0; draw < DRAWS; draw++) {
      var random = new Random(draw);
      List<Rung> rungs = ladder(random);
      double output = logUniform(random, 1, 1e3);
      String generator =
          String.format(Locale.ROOT, "G1 generator n1 0 volts=1 hertz=1k output=%.17g;", output);
      String rows = String.join(";", rungs.stream().map(Rung::row).toList()).replace(" n0", " 0");
      Swings swings = Swings.of(generator + rows);
      for (int k = 0; k < 3; k++) {
        double hertz = logUniform(random, 10, 1e6);
        Complex[] exact = opinion(rungs, output, hertz);
        for (int net = 1; net <= exact.length; net++) {
          Phasor phasor = swings.volts("n" + net, "0", hertz);
          Complex off = new Complex(phasor.re(), phasor.im()).subtract(exact[net - 1]);
          assertThat(off.abs())
              .as("draw %d net %d at %s Hz: %s", draw, net, hertz, exact[net - 1])
              .isLessThan(SHARE * exact[net - 1].abs() + SMALLEST);
        }
      }
    }
  }

  /**
   * Rounding of the generator's volt, some hundred last digits where coils and capacitors all but
   * cancel: no share of what a ladder all but stops is asked for (V).
   */
  private static final double SMALLEST = 1e-12;
}
