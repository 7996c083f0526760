package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.reading.Bench;
import org.holewise.engine.reading.Instrument;
import org.holewise.engine.reading.Meter;

/**
 * Finds the fault: every hypothesis predicts the readings from its own operating point, Bayes' rule
 * weighs it, and the weights are summed over places. Then asks for the reading that tells most, and
 * names the acts that test or mend the likeliest places.
 */
public final class FaultFinder {
  private static final double LEAST = 0.001;
  private static final int AT_LEAST = 3;
  private static final int AT_MOST = 20;

  /** Squared deviations within which two hypotheses see the same. */
  private static final double ALIKE = 1;

  /** A kind with less than this part of its place's probability is not said. */
  private static final double WORTH_SAYING = 1e-3;

  /** Some hundred hypotheses need no better: what it lets go is far below their spread. */
  private static final double STIFF = 0.02;

  private FaultFinder() {}

  /**
   * @param ask kinds of reading that may be asked for, such as {@code volts}; empty for all
   */
  public static Diagnosis find(Scene scene, Meter meter, Priors priors, Set<String> ask) {
    List<Weighted> all = weigh(scene, meter, priors);
    List<Group> groups = groups(all);
    List<Group> shown = new ArrayList<>();
    for (Group group : groups) {
      if (shown.size() < AT_LEAST || (shown.size() < AT_MOST && group.probability() >= LEAST)) {
        shown.add(group);
      }
    }
    var suspects = new ArrayList<Suspect>();
    for (Group group : shown) {
      suspects.add(
          new Suspect(group.place(), guesses(group), group.probability(), alike(group, shown)));
    }
    Optional<NextReading> next = new NextQuestion(scene, meter, ask, groups).best();
    return new Diagnosis(suspects, next, Acts.of(suspects));
  }

  /** One prediction with its posterior probability. */
  record Weighted(Prediction prediction, double probability) {}

  /** All that may be wrong at one place, likeliest first. */
  record Group(Place place, List<Weighted> members, double probability) {}

  private static List<Weighted> weigh(Scene scene, Meter meter, Priors priors) {
    var instrument = new Instrument(meter, STIFF);
    Bench base = Bench.of(scene.record());
    List<Forecasts> ofBase =
        ways(base, scene).stream().map(way -> new Forecasts(way, instrument)).toList();
    var predictions = new ArrayList<Prediction>();
    var logs = new ArrayList<Double>();
    double most = Double.NEGATIVE_INFINITY;
    for (var weighed : Hypotheses.of(scene, priors)) {
      Hypothesis hypothesis = weighed.fault().orElseGet(() -> Hypothesis.sound(scene.record()));
      List<Forecasts> ways =
          weighed.fault().isEmpty() || hypothesis.slip().isPresent()
              ? ofBase
              : ways(Bench.near(base, hypothesis.assembly()), scene).stream()
                  .map(way -> new Forecasts(way, instrument))
                  .toList();
      for (Forecasts way : ways) {
        var prediction = new Prediction(hypothesis, way, scene.observations());
        double log = StrictMath.log(weighed.prior() / ways.size()) + prediction.logLikelihood();
        predictions.add(prediction);
        logs.add(log);
        most = Math.max(most, log);
      }
    }
    double sum = 0;
    for (double log : logs) {
      sum += StrictMath.exp(log - most);
    }
    var all = new ArrayList<Weighted>();
    for (int i = 0; i < logs.size(); i++) {
      all.add(new Weighted(predictions.get(i), StrictMath.exp(logs.get(i) - most) / sum));
    }
    return all;
  }

  /** A bench, and what it may as well be where something on it is anybody's guess. */
  private static List<Bench> ways(Bench bench, Scene scene) {
    boolean doubtful = scene.observations().stream().anyMatch(o -> bench.doubtful(o.condition()));
    return doubtful ? List.of(bench, bench.doubted()) : List.of(bench);
  }

  private static List<Group> groups(List<Weighted> all) {
    Map<Place, List<Weighted>> byPlace = new LinkedHashMap<>();
    for (Weighted one : all) {
      byPlace
          .computeIfAbsent(one.prediction().hypothesis().place(), place -> new ArrayList<>())
          .add(one);
    }
    var groups = new ArrayList<Group>();
    byPlace.forEach(
        (place, members) -> {
          members.sort(Comparator.comparingDouble(Weighted::probability).reversed());
          double sum = members.stream().mapToDouble(Weighted::probability).sum();
          groups.add(new Group(place, members, sum));
        });
    groups.sort(Comparator.comparingDouble(Group::probability).reversed());
    return groups;
  }

  /** Members of one kind count together; where they differ, the likeliest says where. */
  private static List<Suspect.Guess> guesses(Group group) {
    Map<String, Suspect.Guess> kinds = new LinkedHashMap<>();
    for (Weighted member : group.members()) {
      Hypothesis hypothesis = member.prediction().hypothesis();
      kinds.merge(
          hypothesis.kind(),
          new Suspect.Guess(
              hypothesis.kind(),
              hypothesis.holes(),
              hypothesis.said().value(),
              hypothesis.said().unit(),
              hypothesis.said().how(),
              member.probability()),
          (first, more) ->
              new Suspect.Guess(
                  first.kind(),
                  first.holes(),
                  first.value(),
                  first.unit(),
                  first.how(),
                  first.probability() + more.probability()));
    }
    return kinds.values().stream()
        .filter(guess -> guess.probability() >= WORTH_SAYING * group.probability())
        .sorted(Comparator.comparingDouble(Suspect.Guess::probability).reversed())
        .toList();
  }

  private static List<Integer> alike(Group group, List<Group> shown) {
    Prediction own = group.members().get(0).prediction();
    var alike = new ArrayList<Integer>();
    for (int i = 0; i < shown.size(); i++) {
      Group other = shown.get(i);
      if (other != group && own.apart(other.members().get(0).prediction()) < ALIKE) {
        alike.add(i);
      }
    }
    return alike;
  }
}
