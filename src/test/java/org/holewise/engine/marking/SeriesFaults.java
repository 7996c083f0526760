package org.holewise.engine.marking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.diagnosis.Priors.Family;

/**
 * All that may be wrong with {@link SeriesBench}, written out by hand: where, how likely beside the
 * rest of its place, and what is then on the bench. The shares of families are the shipped table's.
 */
final class SeriesFaults {
  static final double R1 = 1000;
  static final double R2 = 2200;
  static final double BATTERY = 9;

  /** Standard deviation of the battery, and limit of a resistor. */
  private static final double SPREAD = 0.05;

  private static final double TOLERANCE = 0.05;

  static final List<String> LEADS = List.of("B1.+", "B1.-", "R1.1", "R1.2", "R2.1", "R2.2");

  /** What becomes of a reading. */
  enum Slip {
    NONE,
    NEGATED,
    ANYTHING,
    SCALED
  }

  interface Change {
    void apply(SeriesBench bench, Random random);
  }

  /** How the battery's voltage is distributed, as a density over volts. */
  interface Battery {
    double density(double volts);

    /** Whether it is nothing, for certain. */
    default boolean off() {
      return false;
    }

    double drawn(Random random);
  }

  /**
   * One way to be wrong.
   *
   * @param slip of {@code reading}, {@code factor} its scale; exchanged with {@code with} if that
   *     is not negative
   */
  record Way(
      Family family,
      String place,
      double share,
      Battery battery,
      Change change,
      Slip slip,
      int reading,
      int with,
      double factor) {}

  private final List<Way> ways = new ArrayList<>();

  private static final Battery FRESH = new Normal(1);
  private static final Change NOTHING = (bench, random) -> {};

  /** About so many times its voltage. */
  private record Normal(double times) implements Battery {
    @Override
    public double density(double volts) {
      double z = (volts - times * BATTERY) / (SPREAD * BATTERY);
      return Math.exp(-z * z / 2) / (SPREAD * BATTERY * Math.sqrt(2 * Math.PI));
    }

    @Override
    public double drawn(Random random) {
      return times * BATTERY + SPREAD * BATTERY * random.nextGaussian();
    }
  }

  private record Off() implements Battery {
    @Override
    public double density(double volts) {
      return 0;
    }

    @Override
    public boolean off() {
      return true;
    }

    @Override
    public double drawn(Random random) {
      return 0;
    }
  }

  /** Between 45 and 95 %. */
  private record Low() implements Battery {
    @Override
    public double density(double volts) {
      double share = volts / BATTERY;
      return share >= 0.45 && share <= 0.95 ? 1 / (0.5 * BATTERY) : 0;
    }

    @Override
    public double drawn(Random random) {
      return BATTERY * (0.45 + 0.5 * random.nextDouble());
    }
  }

  /** Every way, with its prior. */
  static Map<Way, Double> all() {
    var faults = new SeriesFaults();
    faults.leads();
    faults.parts();
    faults.supply();
    faults.meter();
    return faults.weighed();
  }

  private void add(Family family, String place, double share, Change change) {
    ways.add(new Way(family, place, share, FRESH, change, Slip.NONE, -1, -1, 1));
  }

  private void leads() {
    for (int k = 0; k < LEADS.size(); k++) {
      int lead = k;
      String place = "lead " + LEADS.get(k);
      int other = k % 2 == 0 ? k + 1 : k - 1;
      // A column to either side, across the groove: three strips in which nothing else is.
      add(Family.WRONG_HOLE, place, 3, (bench, random) -> bench.strip[lead] = 3);
      add(Family.WRONG_HOLE, place, 1, (bench, random) -> bench.strip[lead] = bench.strip[other]);
      add(Family.LEAD_CONTACT, place, 0.35, (bench, random) -> bench.contact[lead] = 1e9);
      add(Family.LEAD_CONTACT, place, 0.15, (bench, random) -> bench.contact[lead] = 1e12);
      add(
          Family.LEAD_CONTACT,
          place,
          0.5,
          (bench, random) -> bench.contact[lead] = Math.pow(10, 1 + 3 * random.nextDouble()));
    }
    for (int[] strips : new int[][] {{0, 1}, {0, 2}, {1, 2}}) {
      add(
          Family.LEFTOVER,
          "strips " + strips[0] + " " + strips[1],
          1,
          (bench, random) -> bench.join(strips[0], strips[1], 0.02));
    }
  }

  private void parts() {
    for (double[] value : new double[][] {{2.2, 3}, {10, 2}, {0.1, 2}, {100, 1}, {0.01, 1}}) {
      add(Family.WRONG_VALUE, "part R1", value[1], (bench, random) -> bench.r1 *= value[0]);
    }
    for (double[] value : new double[][] {{1 / 2.2, 3}, {10, 2}, {0.1, 2}, {100, 1}, {0.01, 1}}) {
      add(Family.WRONG_VALUE, "part R2", value[1], (bench, random) -> bench.r2 *= value[0]);
    }
    add(
        Family.EXCHANGED,
        "parts R1 R2",
        1,
        (bench, random) -> {
          bench.r1 *= 2.2;
          bench.r2 /= 2.2;
        });
    add(Family.DEAD_PART, "part R1", 0.9, (bench, random) -> bench.r1 = 1e15);
    add(Family.DEAD_PART, "part R2", 0.9, (bench, random) -> bench.r2 = 1e15);
    for (int first : new int[] {2, 4}) {
      add(
          Family.DEAD_PART,
          first == 2 ? "part R1" : "part R2",
          0.1,
          (bench, random) ->
              bench.join(SeriesBench.node(first), SeriesBench.node(first + 1), 0.02));
    }
  }

  private void supply() {
    String place = "supply B1";
    ways.add(new Way(Family.SUPPLY_OFF, place, 1, new Off(), NOTHING, Slip.NONE, -1, -1, 1));
    ways.add(new Way(Family.SUPPLY_LOW, place, 1, new Low(), NOTHING, Slip.NONE, -1, -1, 1));
    ways.add(
        new Way(Family.SUPPLY_REVERSED, place, 1, new Normal(-1), NOTHING, Slip.NONE, -1, -1, 1));
  }

  private void meter() {
    for (int reading = 0; reading < 3; reading++) {
      String place = "reading " + reading;
      slip(place, 0.35, Slip.NEGATED, reading, 1);
      slip(place, 0.4, Slip.ANYTHING, reading, 1);
      slip(place, 0.15, Slip.SCALED, reading, 0);
      for (double factor : new double[] {10, 0.1, 1000, 1e-3}) {
        slip(place, 0.025, Slip.SCALED, reading, factor);
      }
    }
    for (int[] two : new int[][] {{0, 1}, {0, 2}, {1, 2}}) {
      ways.add(
          new Way(
              Family.READINGS,
              "readings " + two[0] + " " + two[1],
              1,
              FRESH,
              NOTHING,
              Slip.NONE,
              two[0],
              two[1],
              1));
    }
  }

  private void slip(String place, double share, Slip slip, int reading, double factor) {
    ways.add(new Way(Family.METER, place, share, FRESH, NOTHING, slip, reading, -1, factor));
  }

  /** A family is shared evenly over its places, a place over its ways. */
  private Map<Way, Double> weighed() {
    Priors table = Priors.start();
    Map<Family, Set<String>> places = new LinkedHashMap<>();
    Map<String, Double> shares = new LinkedHashMap<>();
    for (Way way : ways) {
      places.computeIfAbsent(way.family, family -> new LinkedHashSet<>()).add(way.place);
      shares.merge(way.family + way.place, way.share, Double::sum);
    }
    double present =
        places.keySet().stream().mapToDouble(family -> table.shares().get(family)).sum();
    Map<Way, Double> priors = new LinkedHashMap<>();
    var none = new Way(Family.NONE, "none", 1, FRESH, NOTHING, Slip.NONE, -1, -1, 1);
    priors.put(none, table.sound());
    for (Way way : ways) {
      double family = (1 - table.sound()) * table.shares().get(way.family) / present;
      double place = family / places.get(way.family).size();
      priors.put(way, place * way.share / shares.get(way.family + way.place));
    }
    return priors;
  }

  /** A bench with resistors in tolerance. */
  static SeriesBench bench(Way way, Random random) {
    var bench =
        new SeriesBench(
            R1 * (1 + TOLERANCE * (2 * random.nextDouble() - 1)),
            R2 * (1 + TOLERANCE * (2 * random.nextDouble() - 1)));
    way.change.apply(bench, random);
    return bench;
  }
}
