package org.holewise.engine.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.exercise.BenchDraft;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.marking.SeriesFaults.Slip;
import org.holewise.engine.marking.SeriesFaults.Way;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * Probabilities beside those of brute force, of a battery and two resistors: every fault written
 * out by hand, its benches drawn many thousands of times with parts, the meter's gain and its last
 * digits, and Bayes' rule over how often they read what was read. Only the prior table is shared.
 *
 * <p>A bench's readings go with its battery's voltage, so that of each draw only voltages are tried
 * that could give the first reading that is not nothing, weighed by their density.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BruteForceTest {
  private static final double CLOSE = 0.02;
  private static final int DRAWS = 20_000;
  private static final int CONTACTS = 20_000;
  private static final int VOLTAGES = 5;

  /** Room for what the meter and the wires take. */
  private static final double MARGIN_LOW = 0.99;

  private static final double MARGIN_HIGH = 1.01;
  private static final int EACH = 3;

  /** The meter: ranges (V), counts of each, limits of gain and of digits (hand-2000). */
  private static final double[] RANGES = {0.2, 2, 20, 200};

  private static final double COUNTS = 2000;
  private static final double GAIN = 0.005;
  private static final double DIGITS = 2;

  private static final Exercise EXERCISE =
      new ExerciseDraft()
          .part("B1", "battery", "volts", SeriesFaults.BATTERY, "internal", 1)
          .part("R1", "resistor", "ohms", SeriesFaults.R1)
          .part("R2", "resistor", "ohms", SeriesFaults.R2)
          .net("plus", "B1.+ R1.1")
          .net("middle", "R1.2 R2.1")
          .net("minus", "R2.2 B1.-")
          .reading("supply", ExerciseDraft.volts("B1.+", "B1.-"))
          .reading("first", ExerciseDraft.volts("R1.1", "R1.2"))
          .reading("second", ExerciseDraft.volts("R2.1", "R2.2"))
          .exercise();

  private static final List<String> IDS = List.of("supply", "first", "second");

  private final Map<Way, Double> ways = SeriesFaults.all();
  private final List<Case> cases = new ArrayList<>();

  /** What was read (V) of a bench that was drawn, and how likely each way makes it. */
  private record Case(String name, double[] read, Map<Way, Double> likelihoods) {}

  @BeforeAll
  void drawCasesAndBenches() {
    var random = new Random(11);
    cases(random, "sound", way -> way.family() == Family.NONE);
    cases(random, "open lead", way -> open(way) && way.place().equals("lead R1.2"));
    cases(random, "poor contact", way -> poor(way) && way.place().equals("lead R2.1"));
    cases(random, "wrong value", way -> way.family() == Family.WRONG_VALUE && way.share() == 3);
    cases(random, "parts exchanged", way -> way.family() == Family.EXCHANGED);
    cases(random, "supply low", way -> way.family() == Family.SUPPLY_LOW);
    cases(random, "supply off", way -> way.family() == Family.SUPPLY_OFF);
    cases(random, "meter leads", way -> way.slip() == Slip.NEGATED && way.reading() == 1);
    cases(random, "readings exchanged", way -> way.with() == 2 && way.reading() == 1);
    for (Way way : ways.keySet()) {
      var draws = new Random(way.place().hashCode() * 31L + way.family().ordinal());
      if (poor(way)) {
        cases.forEach(one -> weighContact(one, way, draws));
      } else {
        weigh(way, draws);
      }
    }
  }

  private static boolean open(Way way) {
    return way.family() == Family.LEAD_CONTACT && way.share() == 0.15;
  }

  private static boolean poor(Way way) {
    return way.family() == Family.LEAD_CONTACT && way.share() == 0.5;
  }

  private void cases(Random random, String name, Predicate<Way> which) {
    List<Way> like = ways.keySet().stream().filter(which).toList();
    assertThat(like).as(name).isNotEmpty();
    for (int i = 0; i < EACH; i++) {
      Way way = like.get(i % like.size());
      double[] read = taken(way, random);
      cases.add(new Case(name + " " + i, read, new LinkedHashMap<>()));
    }
  }

  /** Readings as a meter shows them and a student writes them. */
  private static double[] taken(Way way, Random random) {
    double[] shown = SeriesFaults.bench(way, random).readings();
    double volts = way.battery().drawn(random);
    double gain = 1 + GAIN * (2 * random.nextDouble() - 1);
    double[] read = new double[shown.length];
    for (int k = 0; k < read.length; k++) {
      double value =
          gain * volts * shown[k] * (way.slip() == Slip.NEGATED && way.reading() == k ? -1 : 1);
      double count = count(value);
      double digits = DIGITS * count * (2 * random.nextDouble() - 1);
      read[k] = Math.rint((value + digits) / count) * count;
    }
    return way.with() < 0 ? read : exchanged(read, way.reading(), way.with());
  }

  private static double[] exchanged(double[] read, int one, int other) {
    double[] exchanged = read.clone();
    exchanged[one] = read[other];
    exchanged[other] = read[one];
    return exchanged;
  }

  private static double fullScale(double value) {
    for (double range : RANGES) {
      if (Math.abs(value) < range) {
        return range;
      }
    }
    throw new IllegalArgumentException("more than any range: " + value);
  }

  private static double count(double value) {
    return fullScale(value) / COUNTS;
  }

  /** Adds to every case how likely a way makes it. */
  private void weigh(Way way, Random random) {
    double[] sums = new double[cases.size()];
    for (int draw = 0; draw < DRAWS; draw++) {
      double[] shown = SeriesFaults.bench(way, random).readings();
      for (int voltage = 0; voltage < VOLTAGES; voltage++) {
        double gain = 1 + GAIN * (2 * random.nextDouble() - 1);
        double where = random.nextDouble();
        for (int c = 0; c < sums.length; c++) {
          sums[c] += density(way, cases.get(c).read(), shown, gain, where);
        }
      }
    }
    for (int c = 0; c < sums.length; c++) {
      cases.get(c).likelihoods().put(way, sums[c] / (DRAWS * VOLTAGES));
    }
  }

  /**
   * A poor contact leaves one circuit in many of them at a reading of so many digits: of each draw
   * of parts only a second resistor and a contact are tried that could give the second reading
   * beside the first, and that beside the supply's, weighed by their densities.
   */
  private void weighContact(Case one, Way way, Random random) {
    int lead = SeriesFaults.LEADS.indexOf(way.place().substring("lead ".length()));
    double most = most(one.read()[1], one.read()[0]);
    double least = least(one.read()[1], one.read()[0]);
    double sum = 0;
    for (int draw = 0; draw < CONTACTS; draw++) {
      SeriesBench bench = SeriesFaults.bench(way, random);
      double from =
          Math.max(0.95 * SeriesFaults.R2, bench.r1 * least(one.read()[2], one.read()[1]));
      double to = Math.min(1.05 * SeriesFaults.R2, bench.r1 * most(one.read()[2], one.read()[1]));
      bench.r2 = from + (to - from) * random.nextDouble();
      double others = bench.r1 + bench.r2;
      double low = Math.max(10, MARGIN_LOW * bench.r1 / most - others);
      double high = least > 0 ? Math.min(10e3, MARGIN_HIGH * bench.r1 / least - others) : 10e3;
      if (high <= low || to <= from) {
        continue;
      }
      bench.contact[lead] = low + (high - low) * random.nextDouble();
      double weight =
          (high - low)
              / (bench.contact[lead] * Math.log(1000))
              * (to - from)
              / (0.1 * SeriesFaults.R2);
      double[] shown = bench.readings();
      for (int voltage = 0; voltage < VOLTAGES; voltage++) {
        double gain = 1 + GAIN * (2 * random.nextDouble() - 1);
        sum += weight * density(way, one.read(), shown, gain, random.nextDouble());
      }
    }
    one.likelihoods().put(way, sum / (CONTACTS * VOLTAGES));
  }

  /** The most that one reading can be beside another, and the least. */
  private static double most(double one, double other) {
    double half = (DIGITS + 0.5) * count(one);
    double beside = (DIGITS + 0.5) * count(other);
    return other > beside ? Math.max(0, one + half) / (other - beside) : Double.MAX_VALUE;
  }

  private static double least(double one, double other) {
    double half = (DIGITS + 0.5) * count(one);
    return other > 0 ? (one - half) / (other + (DIGITS + 0.5) * count(other)) : 0;
  }

  /** Of one draw, the battery's voltage being drawn where it can be. */
  private static double density(Way way, double[] read, double[] shown, double gain, double where) {
    double[] meant = way.with() < 0 ? read : exchanged(read, way.reading(), way.with());
    if (way.battery().off()) {
      return ofAll(way, meant, shown, 0);
    }
    int pilot = pilot(way, meant, shown);
    if (pilot < 0) {
      return ofAll(way, meant, shown, gain * SeriesFaults.BATTERY);
    }
    double factor = factor(way, pilot) * shown[pilot] * gain;
    double half = (DIGITS + 0.5) * count(meant[pilot]);
    double volts = (meant[pilot] + half * (2 * where - 1)) / factor;
    double width = 2 * half / Math.abs(factor);
    return width * way.battery().density(volts) * ofAll(way, meant, shown, gain * volts);
  }

  /** The reading that tells most of the voltage: the largest that is not a slip. */
  private static int pilot(Way way, double[] read, double[] shown) {
    int pilot = -1;
    for (int k = 0; k < read.length; k++) {
      boolean told = factor(way, k) != 0 && !(way.slip() == Slip.ANYTHING && way.reading() == k);
      double best = pilot < 0 ? 1e-3 : Math.abs(shown[pilot] * factor(way, pilot));
      if (told && Math.abs(shown[k] * factor(way, k)) > best) {
        pilot = k;
      }
    }
    return pilot;
  }

  private static double factor(Way way, int k) {
    if (way.reading() != k) {
      return 1;
    }
    return way.slip() == Slip.NEGATED ? -1 : way.slip() == Slip.SCALED ? way.factor() : 1;
  }

  private static double ofAll(Way way, double[] read, double[] shown, double volts) {
    double density = 1;
    for (int k = 0; k < read.length && density > 0; k++) {
      density *=
          way.slip() == Slip.ANYTHING && way.reading() == k
              ? 1 / (2 * fullScale(read[k]))
              : box(read[k], factor(way, k) * shown[k] * volts);
    }
    return density;
  }

  /** Digits are uniform to either side, and then the last is rounded. */
  private static double box(double read, double value) {
    double count = count(read);
    double low = Math.max(read - count / 2, value - DIGITS * count);
    double high = Math.min(read + count / 2, value + DIGITS * count);
    return Math.max(0, high - low) / (2 * DIGITS * count) / count;
  }

  private Map<String, Double> byForce(Case one) {
    Map<String, Double> places = new TreeMap<>();
    double sum = 0;
    for (var way : ways.entrySet()) {
      double weight = way.getValue() * one.likelihoods().get(way.getKey());
      sum += weight;
      places.merge(way.getKey().place(), weight, Double::sum);
    }
    double all = sum;
    assertThat(all).as(one.name()).isPositive();
    places.replaceAll((place, weight) -> weight / all);
    return places;
  }

  private static Map<String, Double> byFinder(double[] read) {
    var draft =
        new BenchDraft(EXERCISE)
            .place("B1", "a10 a20")
            .place("R1", "b10 b15")
            .place("R2", "c15 c20");
    for (int k = 0; k < read.length; k++) {
      int places = (int) Math.round(-Math.log10(count(read[k])));
      draft.read(IDS.get(k), String.format(Locale.ROOT, "%." + places + "f V", read[k]));
    }
    Mark mark = Marking.mark(EXERCISE, draft.record(), Priors.start(), Set.of());
    Map<String, Double> places = new TreeMap<>();
    for (Suspect suspect : mark.diagnosis().suspects()) {
      places.put(name(suspect.place()), suspect.probability());
    }
    return places;
  }

  private static String name(Place place) {
    if (place instanceof Place.OfLead lead) {
      return "lead " + lead.pin();
    }
    if (place instanceof Place.OfPart part) {
      return "part " + part.ref();
    }
    if (place instanceof Place.OfParts parts) {
      return "parts " + parts.one() + " " + parts.other();
    }
    if (place instanceof Place.OfSupply supply) {
      return "supply " + supply.ref();
    }
    if (place instanceof Place.OfReading reading) {
      return "reading " + IDS.indexOf(reading.id());
    }
    if (place instanceof Place.OfReadings readings) {
      return "readings " + IDS.indexOf(readings.one()) + " " + IDS.indexOf(readings.other());
    }
    if (place instanceof Place.OfStrips strips) {
      int one = strip(strips.one().column());
      int other = strip(strips.other().column());
      return "strips " + Math.min(one, other) + " " + Math.max(one, other);
    }
    return "none";
  }

  private static int strip(int column) {
    return column / 5 - 2;
  }

  /** Both have the same list and the same table; without readings nothing is wrong with one. */
  @Test
  void areThePriorsWhereNothingWasRead() {
    List<Family> meters = List.of(Family.METER, Family.READINGS);
    Map<Family, Double> table = Priors.start().shares();
    double present =
        ways.keySet().stream()
            .map(Way::family)
            .distinct()
            .filter(family -> family != Family.NONE)
            .mapToDouble(table::get)
            .sum();
    double unread = meters.stream().mapToDouble(table::get).sum();
    Map<String, Double> priors = new TreeMap<>();
    ways.forEach(
        (way, prior) -> {
          if (!meters.contains(way.family())) {
            double more = way.family() == Family.NONE ? 1 : present / (present - unread);
            priors.merge(way.place(), prior * more, Double::sum);
          }
        });
    Map<String, Double> finder = byFinder(new double[0]);
    assertThat(finder.keySet()).isEqualTo(priors.keySet());
    priors.forEach(
        (place, prior) -> assertThat(finder.get(place)).as(place).isCloseTo(prior, within(1e-9)));
  }

  @Test
  void areWithinTwoHundredthsOfBruteForce() {
    var far = new ArrayList<String>();
    for (Case one : cases) {
      Map<String, Double> force = byForce(one);
      Map<String, Double> finder = byFinder(one.read());
      for (var place : force.entrySet()) {
        double said = finder.getOrDefault(place.getKey(), 0.0);
        if (Math.abs(said - place.getValue()) > CLOSE) {
          far.add(
              String.format(
                  Locale.ROOT,
                  "%s %s: %s is %.3f and was said to be %.3f",
                  one.name(),
                  Arrays.toString(one.read()),
                  place.getKey(),
                  place.getValue(),
                  said));
        }
      }
    }
    assertThat(far).isEmpty();
  }
}
