package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.holewise.engine.diagnosis.FaultFinder.Group;
import org.holewise.engine.diagnosis.FaultFinder.Weighted;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.reading.Meter;

/**
 * Chooses the reading that is expected to tell most about the place: the mutual information of
 * place and outcome, which is the expected fall of entropy over places. Most candidates are dropped
 * before by the spread of the hypotheses' means.
 */
final class NextQuestion {
  /** Least gain that is worth a reading (bit). */
  private static final double LEAST_GAIN = 0.05;

  /** Hypotheses less likely than this do not decide which reading is asked for. */
  private static final double NEGLIGIBLE = 5e-4;

  private static final int MOST_CANDIDATES = 150;
  private static final int CANDIDATES = 20;
  private static final int HYPOTHESES = 40;

  /** So many of the likeliest hypotheses decide which candidates are looked at closely. */
  private static final int FIRST_LOOK = 14;

  private final Scene scene;
  private final Meter meter;
  private final Set<String> ask;
  private final List<Weighted> members = new ArrayList<>();
  private final List<Integer> places = new ArrayList<>();

  NextQuestion(Scene scene, Meter meter, Set<String> ask, List<Group> groups) {
    this.scene = scene;
    this.meter = meter;
    this.ask = ask;
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

  private record Candidate(Measure measure, Condition condition) {}

  /** A candidate with what each hypothesis expects of it. */
  private record Asked(Candidate candidate, double[] mean, double[] variance, double rough) {}

  Optional<NextReading> best() {
    if (!(ask.isEmpty() || ask.contains("volts")) || places.stream().distinct().count() < 2) {
      return Optional.empty();
    }
    List<Asked> promising =
        promising(promising(affordable(candidates()), FIRST_LOOK).stream(), members.size());
    Optional<NextReading> best = Optional.empty();
    for (Asked asked : promising) {
      double gain =
          Information.gain(
              members.stream().mapToDouble(Weighted::probability).toArray(),
              places.stream().mapToInt(Integer::intValue).toArray(),
              asked.mean(),
              asked.variance());
      if (gain >= LEAST_GAIN && best.filter(found -> found.gain() >= gain).isEmpty()) {
        Candidate candidate = asked.candidate();
        best =
            Optional.of(new NextReading(candidate.measure(), candidate.condition().name(), gain));
      }
    }
    return best;
  }

  private List<Candidate> promising(List<Candidate> all, int hypotheses) {
    return promising(all.stream(), Math.min(hypotheses, members.size())).stream()
        .map(Asked::candidate)
        .toList();
  }

  /** The candidates that tell the likeliest hypotheses apart best. */
  private List<Asked> promising(Stream<Candidate> all, int hypotheses) {
    return all.map(candidate -> asked(candidate, hypotheses))
        .flatMap(Optional::stream)
        .sorted(Comparator.comparingDouble(Asked::rough).reversed())
        .limit(CANDIDATES)
        .toList();
  }

  /** Of more candidates than are worth the time, evenly many along the parts. */
  private static List<Candidate> affordable(List<Candidate> all) {
    int step = 1 + all.size() / MOST_CANDIDATES;
    return IntStream.iterate(0, i -> i < all.size(), i -> i + step).mapToObj(all::get).toList();
  }

  private List<Candidate> candidates() {
    var all = new ArrayList<Candidate>();
    for (Condition condition : scene.exercise().conditions()) {
      for (Measure.Volts volts : volts()) {
        boolean taken =
            scene.observations().stream()
                .anyMatch(
                    o ->
                        o.measure().equals(volts) && o.condition().name().equals(condition.name()));
        if (!taken) {
          all.add(new Candidate(volts, condition));
        }
      }
    }
    return all;
  }

  /** Every lead against the reference, and every lead against its own strip. */
  private List<Measure.Volts> volts() {
    Optional<Pin> reference = reference();
    var all = new ArrayList<Measure.Volts>();
    for (Pin pin : scene.exercise().pins()) {
      reference
          .filter(black -> !black.equals(pin))
          .ifPresent(black -> all.add(new Measure.Volts(Probe.at(pin), Probe.at(black))));
      scene
          .layout()
          .flatMap(layout -> layout.hole(pin).flatMap(layout::freeNear))
          .ifPresent(free -> all.add(new Measure.Volts(Probe.at(pin), Probe.at(free))));
    }
    return all;
  }

  private Optional<Pin> reference() {
    return scene.exercise().parts().stream()
        .filter(part -> part.kind().source())
        .findFirst()
        .map(NextQuestion::minus);
  }

  private static Pin minus(Part source) {
    List<Pin> pins = source.pins();
    return pins.stream()
        .filter(pin -> pin.name().equals("-"))
        .findFirst()
        .orElse(pins.get(pins.size() - 1));
  }

  private Optional<Asked> asked(Candidate candidate, int n) {
    double[] mean = new double[n];
    double[] variance = new double[n];
    double total = 0;
    double average = 0;
    for (int h = 0; h < n; h++) {
      var outlook = members.get(h).prediction().outlook(candidate.measure(), candidate.condition());
      if (outlook.isEmpty()) {
        return Optional.empty();
      }
      mean[h] = outlook.get().mean();
      variance[h] = outlook.get().variance();
      total += members.get(h).probability();
      average += members.get(h).probability() * mean[h];
    }
    double rough = 0;
    for (int h = 0; h < n; h++) {
      double off = mean[h] - average / total;
      double square = off * off / variance[h];
      rough += members.get(h).probability() * square / (1 + square);
    }
    return Optional.of(new Asked(candidate, mean, variance, rough));
  }
}
