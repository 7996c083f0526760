package org.holewise.benchmark.finder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.holewise.benchmark.finder.Ailment.How;
import org.holewise.benchmark.finder.Visit.Value;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.reading.Function;
import org.holewise.engine.reading.Meter;
import org.holewise.engine.reading.Meters;

/** Bayes' rule over the very list that the faults are drawn from, each of them sampled. */
final class BestPossible {
  private static final int BENCHES = 100;

  private final List<Ailment> ailments;
  private final List<Sampled> sampled = new ArrayList<>();
  private final Meter meter;

  BestPossible(Setup setup, List<Ailment> ailments, Random random) {
    this.ailments = ailments;
    meter = Meters.named(setup.exercise().meter()).orElseThrow();
    List<String> ids = setup.exercise().readings().stream().map(Reading::id).toList();
    for (Ailment ailment : ailments) {
      sampled.add(
          ailment.slip().how() == How.NONE
              ? new Sampled(setup, ailment, ids, BENCHES, random)
              : sampled.get(0));
    }
  }

  /** Places, likeliest first, with their probabilities. */
  Map<List<String>, Double> places(Map<String, Value> read) {
    double[] logs = new double[ailments.size()];
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < logs.length; i++) {
      logs[i] = Math.log(ailments.get(i).prior()) + logLikelihood(i, read);
      most = Math.max(most, logs[i]);
    }
    double sum = 0;
    Map<List<String>, Double> places = new LinkedHashMap<>();
    for (int i = 0; i < logs.length; i++) {
      double weight = Math.exp(logs[i] - most);
      sum += weight;
      places.merge(ailments.get(i).places(), weight, Double::sum);
    }
    double total = sum;
    Map<List<String>, Double> sorted = new LinkedHashMap<>();
    places.entrySet().stream()
        .sorted(Comparator.comparingDouble((Map.Entry<?, Double> e) -> -e.getValue()))
        .forEach(e -> sorted.put(e.getKey(), e.getValue() / total));
    return sorted;
  }

  private double logLikelihood(int i, Map<String, Value> read) {
    Ailment.Slip slip = ailments.get(i).slip();
    Value value = read.get(slip.reading());
    if (slip.how() == How.NONE || value == null) {
      return sampled.get(i).logLikelihood(read);
    }
    Map<String, Value> meant = new LinkedHashMap<>(read);
    if (slip.how() == How.NEGATED) {
      meant.put(slip.reading(), value.negated());
      return sampled.get(i).logLikelihood(meant);
    }
    meant.remove(slip.reading());
    double width =
        slip.how() == How.ANYTHING
            ? 2 * Slips.fullScale(meter, value.function(), value.number())
            : 2 * meter.digits(Function.AMPS, 0);
    boolean possible = slip.how() == How.ANYTHING || 2 * Math.abs(value.number()) <= width;
    return sampled.get(i).logLikelihood(meant) + (possible ? -Math.log(width) : -1e3);
  }
}
