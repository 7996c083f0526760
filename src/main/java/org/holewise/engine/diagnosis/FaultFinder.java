package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

  /** Within this two places are equally likely, however their sums were rounded. */
  private static final double EQUAL = 1e-12;

  /** A kind with less than this part of its place's probability is not said. */
  private static final double WORTH_SAYING = 1e-3;

  private FaultFinder() {}

  /**
   * @param ask kinds of reading that may be asked for, such as {@code volts}; empty for all
   */
  public static Diagnosis find(Scene scene, Meter meter, Priors priors, Set<String> ask) {
    List<Group> groups = groups(new Weighing(scene, meter).weighed(priors));
    List<Group> shown = new ArrayList<>();
    for (Group group : groups) {
      if (shown.size() < AT_LEAST || (shown.size() < AT_MOST && group.probability() >= LEAST)) {
        shown.add(group);
      }
    }
    var testimony = new Testimony(sound(groups), scene.observations(), meter);
    var suspects = new ArrayList<Suspect>();
    for (Group group : shown) {
      List<Suspect.Guess> guesses = guesses(group);
      suspects.add(
          new Suspect(
              group.place(),
              guesses,
              group.probability(),
              alike(group, shown),
              evidence(group, guesses.get(0).kind(), testimony)));
    }
    Optional<NextReading> next = new NextQuestion(scene, meter, ask, groups).best();
    return new Diagnosis(suspects, next, Acts.of(suspects));
  }

  /**
   * One hypothesis with its posterior probability.
   *
   * @param places how many groups it is in: two where it is of two faults, and in each with half
   */
  record Weighted(Hypothesis hypothesis, Prediction prediction, double probability, int places) {}

  /** All that may be wrong at one place, likeliest first. */
  record Group(Place place, List<Weighted> members, double probability) {}

  private static List<Group> groups(List<Weighted> all) {
    Map<Place, List<Weighted>> byPlace = new LinkedHashMap<>();
    for (Weighted one : all) {
      byPlace.computeIfAbsent(one.hypothesis().place(), place -> new ArrayList<>()).add(one);
    }
    var groups = new ArrayList<Group>();
    byPlace.forEach(
        (place, members) -> {
          members.sort(Comparator.comparingDouble(Weighted::probability).reversed());
          double sum = members.stream().mapToDouble(one -> one.places() * one.probability()).sum();
          groups.add(new Group(place, members, sum));
        });
    groups.sort(
        Comparator.comparingDouble((Group group) -> Math.rint(group.probability() / EQUAL))
            .reversed());
    return groups;
  }

  /** What all being as it was entered makes of the readings. */
  private static Prediction sound(List<Group> groups) {
    return groups.stream()
        .filter(group -> group.place() instanceof Place.Nowhere)
        .findFirst()
        .orElseThrow()
        .members()
        .get(0)
        .prediction();
  }

  private static Evidence evidence(Group group, String kind, Testimony testimony) {
    return group.place() instanceof Place.Nowhere
        ? Evidence.NONE
        : group.members().stream()
            .filter(member -> member.hypothesis().kind().equals(kind))
            .findFirst()
            .map(member -> testimony.of(member.prediction()))
            .orElse(Evidence.NONE);
  }

  /** Members of one kind count together; where they differ, the likeliest says where. */
  private static List<Suspect.Guess> guesses(Group group) {
    Map<String, Suspect.Guess> kinds = new LinkedHashMap<>();
    for (Weighted member : group.members()) {
      Hypothesis hypothesis = member.hypothesis();
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
