package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.holewise.engine.part.Part;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of every circuit, on many drawn at random. */
@Tag("law")
class RandomLawsTest {
  /** Rounding of a voltage, with room for as many terms as a net has. */
  private static final double SHARE = 1e-9;

  /** Rounding of saturation currents of nanoamperes that cancel (A). */
  private static final double LEAK_ROUNDING = 1e-24;

  /** Power of a picoampere through ten volts (W): less is rounding. */
  private static final double NO_POWER = 1e-11;

  static Stream<Arguments> families() {
    return Stream.of(
        Arguments.of("all kinds", RandomCircuits.ALL, 10_000),
        Arguments.of("linear", RandomCircuits.LINEAR, 3000),
        Arguments.of("junctions", RandomCircuits.JUNCTIONS, 3000),
        Arguments.of("bipolars", RandomCircuits.BIPOLAR, 3000));
  }

  /**
   * One operating point where the sources agree, none where they contradict; Kirchhoff's current
   * law at every net; voltages inside the sources' span; as much power turned to heat as is fed in.
   */
  @ParameterizedTest(name = "{0}")
  @MethodSource("families")
  void everyCircuitKeepsTheLaws(String name, List<String> kinds, int draws) {
    int solved = 0;
    int refused = 0;
    for (int draw = 0; draw < draws; draw++) {
      Rows rows = RandomCircuits.draw(draw, kinds);
      Outcome outcome = OperatingPointSolver.solve(rows.circuit());
      boolean contradicts = SourceGraph.contradicts(rows, Metal.of(rows));
      if (outcome instanceof OperatingPoint point) {
        assertThat(contradicts).as("%s %d should be refused", name, draw).isFalse();
        var audit = new Audit(rows, point);
        assertThat(audit.complaints()).as("%s %d", name, draw).isEmpty();
        insideTheSpan(rows, point, draw);
        powerBalances(rows, point, audit.islandWatts(), draw);
        solved++;
      } else {
        assertThat(outcome)
            .asInstanceOf(InstanceOfAssertFactories.type(Unsolvable.class))
            .extracting(Unsolvable::why)
            .as("%s %d", name, draw)
            .isEqualTo(Unsolvable.Why.SOURCE_LOOP);
        assertThat(contradicts).as("%s %d should be solved", name, draw).isTrue();
        refused++;
      }
    }
    assertThat(solved).isGreaterThan(draws / 2);
    assertThat(refused).isGreaterThan(draws / 200);
  }

  /** No net is further from the reference than all sources in a row would bring it. */
  private static void insideTheSpan(Rows rows, OperatingPoint point, int draw) {
    double span =
        rows.parts().stream()
            .filter(part -> part.kind().source())
            .mapToDouble(part -> part.number("volts"))
            .sum();
    for (int net = 0; net < rows.netlist().nets().size(); net++) {
      assertThat(Math.abs(point.volts(new Point.AtNet(net))))
          .as("draw %d net %d", draw, net)
          .isLessThanOrEqualTo(span * (1 + SHARE));
    }
  }

  private static void powerBalances(Rows rows, OperatingPoint point, double islandWatts, int draw) {
    double sum = islandWatts;
    double size = islandWatts;
    for (Part part : rows.parts()) {
      double watts = point.power(part.ref());
      sum += watts;
      size += Math.abs(watts);
    }
    assertThat(sum).as("draw %d", draw).isCloseTo(0, within(NO_POWER + SHARE * size));
  }

  /** The order of the list of parts and of the nets makes no difference, to the last bit. */
  @Test
  void orderMakesNoDifferenceAtAll() {
    int compared = 0;
    for (int draw = 0; draw < 1500; draw++) {
      Rows rows = RandomCircuits.draw(draw, RandomCircuits.ALL);
      Rows shuffled = Shuffled.order(rows, draw);
      Outcome one = OperatingPointSolver.solve(rows.circuit());
      Outcome other = OperatingPointSolver.solve(shuffled.circuit());
      assertThat(one.getClass()).isEqualTo(other.getClass());
      if (one instanceof OperatingPoint p && other instanceof OperatingPoint q) {
        for (Part part : rows.parts()) {
          for (var pin : part.pins()) {
            assertThat(q.volts(new Point.AtPin(pin))).isEqualTo(p.volts(new Point.AtPin(pin)));
          }
        }
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(1000);
  }

  /**
   * Other refs lead the search another way through another order of elimination. A circuit without
   * bipolars is monotone and has one solution, which must come out the same. With bipolars a
   * circuit may have several (two of them make a flip-flop): there either must keep the laws, and
   * most come out the same.
   */
  @ParameterizedTest(name = "{0}")
  @MethodSource("renamed")
  void otherNamesMakeNoDifferenceBeyondRounding(
      String name, List<String> kinds, int draws, double unlike) {
    int compared = 0;
    int differing = 0;
    for (int draw = 0; draw < draws; draw++) {
      Rows rows = RandomCircuits.draw(draw, kinds);
      Rows renamed = Shuffled.names(rows, draw);
      if (OperatingPointSolver.solve(rows.circuit()) instanceof OperatingPoint p
          && OperatingPointSolver.solve(renamed.circuit()) instanceof OperatingPoint q) {
        compared++;
        if (difference(rows, renamed, p, q) > SHARE) {
          differing++;
          assertThat(new Audit(renamed, q).complaints()).as("%s %d", name, draw).isEmpty();
        }
      }
    }
    assertThat(compared).isGreaterThan(draws / 2);
    assertThat(differing).isLessThanOrEqualTo((int) (unlike * compared));
  }

  static Stream<Arguments> renamed() {
    return Stream.of(
        Arguments.of("linear", RandomCircuits.LINEAR, 1000, 0.0),
        Arguments.of("junctions", RandomCircuits.JUNCTIONS, 1000, 0.0),
        Arguments.of("bipolars", RandomCircuits.BIPOLAR, 1000, 0.02));
  }

  /**
   * Largest difference over all pins, as a share of the largest voltage, beyond what the rounding
   * of a leak makes of it: a net between junctions that all block hangs on 1e18 Ω and more.
   */
  private static double difference(Rows rows, Rows renamed, OperatingPoint p, OperatingPoint q) {
    double most = 0;
    double size = 1e-3;
    for (int k = 0; k < rows.parts().size(); k++) {
      Part part = rows.parts().get(k);
      Part other = renamed.parts().get(k);
      for (int pin = 0; pin < part.pins().size(); pin++) {
        Point at = new Point.AtPin(part.pins().get(pin));
        double one = p.volts(at);
        double two = q.volts(new Point.AtPin(other.pins().get(pin)));
        double apart = Math.abs(one - two);
        size = Math.max(size, Math.abs(one));
        if (apart > most) {
          double ohms = p.response(at, p.circuit().reference()).ohms();
          most = Math.max(most, apart - Math.abs(ohms) * LEAK_ROUNDING);
        }
      }
    }
    return most / size;
  }

  private static final List<String> WITHOUT_LIMITS = List.of("resistor", "resistor", "battery");

  /** What all sources do together is the sum of what each does alone, the others at zero volts. */
  @Test
  void linearCircuitsSuperpose() {
    int compared = 0;
    for (int draw = 0; draw < 1000; draw++) {
      Rows rows = RandomCircuits.draw(draw, WITHOUT_LIMITS);
      if (!(OperatingPointSolver.solve(rows.circuit()) instanceof OperatingPoint all)) {
        continue;
      }
      double[] sums = new double[rows.netlist().nets().size()];
      for (Part source : rows.parts().stream().filter(p -> p.kind().source()).toList()) {
        OperatingPoint one = Rows.solved(rows.circuit().with(silent(rows, source)));
        for (int net = 0; net < sums.length; net++) {
          sums[net] += one.volts(new Point.AtNet(net));
        }
      }
      for (int net = 0; net < sums.length; net++) {
        double volts = all.volts(new Point.AtNet(net));
        assertThat(sums[net]).isCloseTo(volts, within(SHARE * 100));
      }
      compared++;
    }
    assertThat(compared).isGreaterThan(500);
  }

  private static List<Edit> silent(Rows rows, Part but) {
    var edits = new ArrayList<Edit>();
    for (Part part : rows.parts()) {
      if (part.kind().source() && !part.equals(but)) {
        edits.add(new Edit.Instead(part.with("volts", 0.0)));
      }
    }
    return edits;
  }

  /** A second opinion: node equations written here and solved with forty digits. */
  @Test
  void linearCircuitsAgreeWithNodeEquationsInFortyDigits() {
    int compared = 0;
    for (int draw = 0; draw < 120; draw++) {
      Rows rows = RandomCircuits.draw(draw, WITHOUT_LIMITS);
      if (OperatingPointSolver.solve(rows.circuit()) instanceof OperatingPoint point) {
        double[] exact = NodeEquations.solve(rows);
        for (int net = 0; net < exact.length; net++) {
          double volts = point.volts(new Point.AtNet(net));
          assertThat(volts).isCloseTo(exact[net], within(SHARE * Math.max(1, Math.abs(volts))));
        }
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(80);
  }

  /** What a fault or a meter makes of a circuit is solved from the circuit's own point as well. */
  @Test
  void editedCircuitsAreSolvedFromTheirNeighbours() {
    int solved = 0;
    for (int draw = 0; draw < 3000; draw++) {
      Rows rows = RandomCircuits.draw(draw, RandomCircuits.ALL);
      Circuit circuit = rows.circuit();
      if (OperatingPointSolver.solve(circuit) instanceof OperatingPoint start) {
        Circuit edited = circuit.with(edits(rows, new Random(draw)));
        Outcome outcome = OperatingPointSolver.solve(edited, start);
        if (outcome instanceof Unsolvable refused) {
          assertThat(refused.why()).as("%d", draw).isEqualTo(Unsolvable.Why.SOURCE_LOOP);
        } else {
          solved++;
        }
      }
    }
    assertThat(solved).isGreaterThan(2000);
  }

  private static List<Edit> edits(Rows rows, Random random) {
    var pins = rows.parts().stream().flatMap(part -> part.pins().stream()).toList();
    var pin = pins.get(random.nextInt(pins.size()));
    Point one = new Point.AtPin(pins.get(random.nextInt(pins.size())));
    Point other = new Point.AtPin(pins.get(random.nextInt(pins.size())));
    Edit fault =
        switch (random.nextInt(4)) {
          case 0 -> new Edit.Contact(pin, 1e9);
          case 1 -> new Edit.Moved(pin, random.nextInt(rows.netlist().nets().size() + 1));
          case 2 -> new Edit.Without(pin.ref());
          default -> new Edit.Across(one, other, 0);
        };
    return List.of(
        fault,
        random.nextBoolean() ? new Edit.Across(one, other, 10e6) : new Edit.InSeries(pin, 0.01));
  }

  /** From the point of a neighbour the search comes to where it comes to from nothing. */
  @Test
  void aWarmStartComesToTheSamePoint() {
    int compared = 0;
    for (int draw = 0; draw < 1500; draw++) {
      Rows rows = RandomCircuits.draw(draw, RandomCircuits.JUNCTIONS);
      Circuit circuit = rows.circuit();
      var pin = rows.parts().get(rows.parts().size() / 2).pins().get(0);
      Circuit edited = circuit.with(List.of(new Edit.Contact(pin, 1e9)));
      if (OperatingPointSolver.solve(circuit) instanceof OperatingPoint start
          && OperatingPointSolver.solve(edited) instanceof OperatingPoint cold
          && OperatingPointSolver.solve(edited, start) instanceof OperatingPoint warm) {
        assertThat(difference(rows, rows, cold, warm)).as("draw %d", draw).isLessThan(SHARE);
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(1000);
  }

  /** Every circuit's parts in another order, or under other names. */
  private static final class Shuffled {
    private Shuffled() {}

    /** The first part stays first, lest the reference move. */
    static Rows order(Rows rows, long number) {
      var parts = new ArrayList<>(rows.parts());
      Collections.shuffle(parts.subList(1, parts.size()), new Random(number));
      return again(rows, parts, parts);
    }

    static Rows names(Rows rows, long number) {
      var refs = new ArrayList<>(rows.parts().stream().map(Part::ref).toList());
      Collections.shuffle(refs, new Random(number));
      var renamed = new ArrayList<Part>();
      for (int k = 0; k < refs.size(); k++) {
        Part part = rows.parts().get(k);
        renamed.add(new Part(refs.get(k), part.kind(), part.fields()));
      }
      return again(rows, rows.parts(), renamed);
    }

    private static Rows again(Rows rows, List<Part> old, List<Part> parts) {
      Rows again = Rows.of("");
      for (int k = 0; k < parts.size(); k++) {
        again.add(
            parts.get(k),
            old.get(k).pins().stream()
                .map(pin -> rows.netlist().nets().get(rows.netlist().net(pin)).name())
                .toList());
      }
      return again;
    }
  }
}
