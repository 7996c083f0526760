package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.holewise.engine.diagnosis.FaultFinder.Weighted;
import org.holewise.engine.reading.Bench;
import org.holewise.engine.reading.Instrument;
import org.holewise.engine.reading.Meter;

/**
 * Bayes' rule over all hypotheses: each of one fault first, and where none of those explains the
 * readings, two at once.
 *
 * <p>Two faults are taken to come independently of one another. Which two may be together is
 * decided by how well each alone explains the readings, for of two faults that matter each explains
 * some.
 */
final class Weighing {
  /** Some hundred hypotheses need no better: what it lets go is far below their spread. */
  private static final double STIFF = 0.02;

  /** Deviations beyond the mean of χ² (its own being √2n) at which nothing single explains. */
  private static final double BADLY = 4;

  private static final int FIRST = 24;
  private static final int SECOND = 90;

  /** Up to so many leads all pairs are affordable; beyond, solving grows as their cube. */
  private static final double LEADS = 25;

  private final Scene scene;
  private final Instrument instrument;
  private final Bench base;
  private final List<Forecasts> ofBase;
  private final List<Single> all = new ArrayList<>();

  /** A hypothesis, how likely it is beside the others (log), and how many places it is of. */
  private record Single(Hypothesis hypothesis, Prediction prediction, double log, int places) {}

  Weighing(Scene scene, Meter meter) {
    this.scene = scene;
    instrument = new Instrument(meter, STIFF);
    base = Bench.of(scene.record());
    ofBase = ways(base).stream().map(way -> new Forecasts(way, instrument)).toList();
  }

  List<Weighted> weighed(Priors priors) {
    Optional<Unseen> unseen = Optional.empty();
    for (var weighed : Hypotheses.of(scene, priors)) {
      Hypothesis hypothesis = weighed.fault().orElseGet(() -> Hypothesis.sound(scene.record()));
      boolean asRecorded = weighed.fault().isEmpty() || hypothesis.slip().isPresent();
      unseen = unseen.filter(worse -> ContactFaults.milder(hypothesis, worse.hypothesis()));
      List<Forecasts> ways =
          asRecorded
              ? ofBase
              : unseen
                  .map(worse -> worse.on(near(hypothesis)))
                  .orElseGet(() -> forecasts(hypothesis));
      unseen = unseen.or(() -> unseen(hypothesis, ways));
      add(hypothesis, ways, weighed.prior());
    }
    if (badly() && !logical()) {
      addPairs(StrictMath.log(priors.sound()));
    }
    return normalised();
  }

  /** A fault that no reading shows: neither would they show a milder one. */
  private record Unseen(Hypothesis hypothesis, List<Forecasts> ways) {
    List<Forecasts> on(Bench milder) {
      Forecasts first = ways.get(0).on(milder);
      return ways.size() == 1 ? List.of(first) : List.of(first, ways.get(1).on(milder.doubted()));
    }
  }

  private Optional<Unseen> unseen(Hypothesis hypothesis, List<Forecasts> ways) {
    boolean same = ways.size() == ofBase.size();
    for (int k = 0; same && k < ways.size(); k++) {
      same = ways.get(k).same(ofBase.get(k), scene.observations());
    }
    return same ? Optional.of(new Unseen(hypothesis, ways)) : Optional.empty();
  }

  private Bench near(Hypothesis hypothesis) {
    return Bench.near(base, hypothesis.assembly());
  }

  private List<Forecasts> forecasts(Hypothesis hypothesis) {
    return ways(near(hypothesis)).stream().map(way -> new Forecasts(way, instrument)).toList();
  }

  /** A bench, and what it may as well be where something on it is anybody's guess. */
  private List<Bench> ways(Bench bench) {
    boolean doubtful = scene.observations().stream().anyMatch(o -> bench.doubtful(o.condition()));
    return doubtful ? List.of(bench, bench.doubted()) : List.of(bench);
  }

  private void add(Hypothesis hypothesis, List<Forecasts> ways, double prior) {
    for (Forecasts way : ways) {
      var prediction = new Prediction(hypothesis, way, scene.observations());
      double log = StrictMath.log(prior / ways.size()) + prediction.logLikelihood();
      all.add(new Single(hypothesis, prediction, log, 1));
    }
  }

  /** Whether the readings are far from what any single fault would make of them. */
  private boolean badly() {
    int n = scene.observations().size();
    double least =
        all.stream()
            .filter(one -> !(one.hypothesis().slip().orElse(null) instanceof Slip.Anything))
            .mapToDouble(one -> one.prediction().misfit())
            .min()
            .orElse(0);
    return least > n + BADLY * Math.sqrt(2 * n);
  }

  /** Logic settles anew for every pair, which would keep a student waiting. */
  private boolean logical() {
    return scene.observations().stream().anyMatch(o -> base.circuit(o.condition()).logical());
  }

  private long second() {
    double share = LEADS / scene.exercise().pins().size();
    return Math.round(SECOND * Math.min(1, share * share * share));
  }

  private void addPairs(double logSound) {
    List<Single> likely =
        all.stream()
            .filter(one -> one.hypothesis().slip().isEmpty())
            .sorted(Comparator.comparingDouble(Single::log).reversed())
            .limit(second())
            .toList();
    for (int i = 0; i < Math.min(FIRST, likely.size()); i++) {
      for (int j = i + 1; j < likely.size(); j++) {
        addPair(likely.get(i), likely.get(j), logSound);
      }
    }
  }

  /** Prior of both: that of each, over that of neither, twice. */
  private void addPair(Single one, Single other, double logSound) {
    double log = prior(one) + prior(other) - logSound;
    var first = one.hypothesis().and(other.hypothesis(), scene.record());
    var second = other.hypothesis().and(one.hypothesis(), scene.record());
    if (first.isEmpty() || second.isEmpty()) {
      return;
    }
    Bench bench = Bench.near(base, first.get().assembly());
    var prediction =
        new Prediction(first.get(), new Forecasts(bench, instrument), scene.observations());
    double half = log + prediction.logLikelihood() - StrictMath.log(2);
    all.add(new Single(first.get(), prediction, half, 2));
    all.add(new Single(second.get(), prediction, half, 2));
  }

  private static double prior(Single one) {
    return one.log() - one.prediction().logLikelihood();
  }

  private List<Weighted> normalised() {
    double[] probability = Information.normalised(all.stream().mapToDouble(Single::log).toArray());
    var weighted = new ArrayList<Weighted>();
    for (int i = 0; i < probability.length; i++) {
      Single one = all.get(i);
      weighted.add(new Weighted(one.hypothesis(), one.prediction(), probability[i], one.places()));
    }
    return weighted;
  }
}
