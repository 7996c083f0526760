package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.holewise.engine.diagnosis.FaultFinder.Group;
import org.holewise.engine.diagnosis.FaultFinder.Weighted;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.reading.Function;
import org.holewise.engine.reading.Meter;

/**
 * Chooses the reading that is expected to tell most about the place: the mutual information of
 * place and outcome, which is the expected fall of entropy over places. Of readings that tell
 * nearly as much the easiest and safest is taken: volts before ohms before amperes, which must tell
 * more by a margin besides, and the usual condition before another. Most candidates are dropped
 * before by the spread of the hypotheses' means.
 */
final class NextQuestion {
  /** Least gain that is worth a reading (bit). */
  private static final double LEAST_GAIN = 0.05;

  /** Gain that an easier reading may fall short by (bit). */
  private static final double NEARLY = 0.05;

  /** Hypotheses less likely than this do not decide which reading is asked for. */
  private static final double NEGLIGIBLE = 5e-4;

  private static final int HYPOTHESES = 40;

  /** How many candidates are looked at closely, of volts and of what is dearer to foretell. */
  private static final int CANDIDATES = 20;

  private static final int DEARER = 4;

  /** So many of the likeliest hypotheses decide which candidates are looked at closely. */
  private static final int FIRST_LOOK = 14;

  /** Deviations that a current is taken to stay within. */
  private static final double SURELY = 3;

  private final Scene scene;
  private final Meter meter;
  private final Set<String> ask;
  private final Candidates candidates;
  private final List<Weighted> members = new ArrayList<>();
  private final List<Integer> places = new ArrayList<>();

  NextQuestion(Scene scene, Meter meter, Set<String> ask, List<Group> groups) {
    this.scene = scene;
    this.meter = meter;
    this.ask = ask;
    this.candidates = new Candidates(scene);
    record Member(Weighted weighted, int place) {}
    var all = new ArrayList<Member>();
    for (int place = 0; place < groups.size(); place++) {
      for (Weighted weighted : groups.get(place).members()) {
        if (weighted.probability() >= NEGLIGIBLE) {
          all.add(new Member(weighted, place));
        }
      }
    }
    all.sort(
        Comparator.comparingDouble((Member member) -> member.weighted().probability()).reversed());
    all.stream()
        .limit(HYPOTHESES)
        .forEach(
            member -> {
              members.add(member.weighted());
              places.add(member.place());
            });
  }

  /** A candidate with what each hypothesis expects of it; beyond the meter's range is infinite. */
  private record Asked(Candidate candidate, double[] mean, double[] variance, double rough) {}

  private record Scored(Candidate candidate, double gain) {
    double worth() {
      return gain - candidate.effort().more;
    }
  }

  Optional<NextReading> best() {
    if (places.stream().distinct().count() < 2) {
      return Optional.empty();
    }
    List<Scored> scored = scored("volts", candidates::volts, CANDIDATES);
    double most = scored.stream().mapToDouble(Scored::gain).max().orElse(0);
    if (entropy() > most + NEARLY) {
      scored.addAll(scored("ohms", this::ohms, DEARER));
      scored.addAll(scored("amps", candidates::amps, DEARER));
    }
    return easiest(scored);
  }

  private Optional<NextReading> easiest(List<Scored> scored) {
    double most =
        scored.stream()
            .filter(one -> one.gain() >= LEAST_GAIN)
            .mapToDouble(Scored::worth)
            .max()
            .orElse(0);
    List<Condition> conditions = scene.exercise().conditions();
    return scored.stream()
        .filter(one -> one.gain() >= LEAST_GAIN && one.worth() >= most - NEARLY)
        .min(
            Comparator.comparing((Scored one) -> one.candidate().effort())
                .thenComparing(one -> conditions.indexOf(one.candidate().condition()))
                .thenComparing(Comparator.comparingDouble(Scored::gain).reversed()))
        .map(
            one ->
                new NextReading(
                    one.candidate().measure(), one.candidate().condition().name(), one.gain()));
  }

  /** Those of one kind that tell most, unless that kind is not to be asked for. */
  private List<Scored> scored(String kind, Supplier<List<Candidate>> all, int most) {
    var scored = new ArrayList<Scored>();
    if (!ask.isEmpty() && !ask.contains(kind)) {
      return scored;
    }
    List<Candidate> promising = all.get();
    if (promising.size() > most) {
      promising =
          promising(promising, Math.min(FIRST_LOOK, members.size()), most).stream()
              .map(Asked::candidate)
              .toList();
    }
    for (Asked asked : promising(promising, members.size(), most)) {
      if (harmless(asked)) {
        scored.add(new Scored(asked.candidate(), gain(asked)));
      }
    }
    return scored;
  }

  private double gain(Asked asked) {
    return Information.gain(
        members.stream().mapToDouble(Weighted::probability).toArray(),
        places.stream().mapToInt(Integer::intValue).toArray(),
        asked.mean(),
        asked.variance());
  }

  /** Entropy over the places of the hypotheses that decide (bit): nothing can tell more. */
  private double entropy() {
    double[] shares = new double[1 + places.stream().mapToInt(Integer::intValue).max().orElse(0)];
    double total = 0;
    for (int h = 0; h < members.size(); h++) {
      shares[places.get(h)] += members.get(h).probability();
      total += members.get(h).probability();
    }
    return Information.entropy(shares, total);
  }

  private List<Candidate> ohms() {
    return candidates.ohms(
        members.stream().map(member -> member.hypothesis().place()).distinct().toList());
  }

  /** Whether no hypothesis has more current than the meter's fused ranges take. */
  private boolean harmless(Asked asked) {
    if (asked.candidate().effort() != Candidate.Effort.AMPS) {
      return true;
    }
    List<Meter.Range> ranges = meter.scale(Function.AMPS).ranges();
    double most = ranges.get(Math.max(0, ranges.size() - 2)).fullScale();
    for (int h = 0; h < asked.mean().length; h++) {
      if (Math.abs(asked.mean()[h]) + SURELY * Math.sqrt(asked.variance()[h]) >= most) {
        return false;
      }
    }
    return true;
  }

  /** The candidates that tell the likeliest hypotheses apart best. */
  private List<Asked> promising(List<Candidate> all, int hypotheses, int most) {
    return all.stream()
        .map(candidate -> asked(candidate, hypotheses))
        .flatMap(Optional::stream)
        .sorted(Comparator.comparingDouble(Asked::rough).reversed())
        .limit(most)
        .toList();
  }

  private Optional<Asked> asked(Candidate candidate, int n) {
    double[] mean = new double[n];
    double[] variance = new double[n];
    for (int h = 0; h < n; h++) {
      var outlook = members.get(h).prediction().outlook(candidate.measure(), candidate.condition());
      if (outlook.isEmpty()) {
        return Optional.empty();
      }
      mean[h] = outlook.get().mean();
      variance[h] = outlook.get().variance();
    }
    return Optional.of(new Asked(candidate, mean, variance, rough(mean, variance)));
  }

  /** How far the outcomes are spread, from nothing to everything: cheap, and nearly in order. */
  private double rough(double[] mean, double[] variance) {
    double total = 0;
    double numbers = 0;
    double average = 0;
    for (int h = 0; h < mean.length; h++) {
      double probability = members.get(h).probability();
      total += probability;
      if (Double.isFinite(mean[h])) {
        numbers += probability;
        average += probability * mean[h];
      }
    }
    double rough = 0;
    for (int h = 0; h < mean.length; h++) {
      double probability = members.get(h).probability();
      if (Double.isFinite(mean[h])) {
        double off = mean[h] - average / numbers;
        double square = off * off / variance[h];
        rough += probability * Math.max(square / (1 + square), 1 - numbers / total);
      } else {
        rough += probability * numbers / total;
      }
    }
    return rough;
  }
}
