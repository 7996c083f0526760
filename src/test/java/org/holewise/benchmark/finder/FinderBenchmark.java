package org.holewise.benchmark.finder;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.holewise.benchmark.finder.Visit.Value;
import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Extra;
import org.holewise.engine.exercise.Occasion;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.marking.Mark;
import org.holewise.engine.marking.Marking;
import org.holewise.engine.reading.Meters;

/**
 * Draws builds with faults, marks them, asks for up to two more readings and prints how often the
 * place was named, beside the best possible. Arguments: builds a setup, seed, then names of setups
 * ({@code all} for those of the library too; {@code any} to be asked for ohms and amperes besides
 * volts).
 */
public final class FinderBenchmark {
  private final int builds;
  private final Random random;
  private final PrintStream out;
  private final Tally finder = new Tally();
  private final Tally best = new Tally();
  private final Tally twoFaults = new Tally();
  private final Tally afterOne = new Tally();
  private final Tally afterTwo = new Tally();
  private final Askings askings = new Askings();
  private final Set<String> ask;
  private long nanos;
  private int marks;
  private final Map<String, Integer> missed = new TreeMap<>();
  private int lost;

  private FinderBenchmark(int builds, Set<String> ask, Random random, PrintStream out) {
    this.builds = builds;
    this.ask = ask;
    this.random = random;
    this.out = out;
  }

  public static void main(String[] arguments) {
    int builds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 400;
    long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
    var names =
        new ArrayList<>(
            List.of(arguments).subList(Math.min(2, arguments.length), arguments.length));
    Set<String> ask = names.remove("any") ? Set.of() : Set.of("volts");
    var setups = new ArrayList<>(Setup.five());
    if (names.contains("all")) {
      setups.addAll(Setup.shipped());
    }
    setups.removeIf(
        setup -> !names.isEmpty() && !names.contains("all") && !names.contains(setup.name()));
    var whole = new FinderBenchmark(builds, ask, new Random(seed), System.out);
    setups.forEach(whole::run);
    whole.print();
  }

  private void run(Setup setup) {
    List<Ailment> ailments = Ailments.of(setup);
    var possible = new BestPossible(setup, ailments, random);
    var shows = new Shows(setup);
    var own = new Tally();
    var ownBest = new Tally();
    for (int i = 0; i < builds; i++) {
      Ailment ailment = drawn(ailments);
      Truth truth = ailment.truth(setup, random);
      var visit = new Visit(truth, new Random(random.nextLong()));
      var meter = Meters.named(setup.exercise().meter()).orElseThrow();
      Map<String, Value> read = Slips.slipped(ailment.slip(), visit.readings(), meter, random);
      Map<List<String>, Double> most = possible.places(read);
      best.count(ailment, most);
      ownBest.count(ailment, most);
      Mark mark = mark(setup, read, List.of());
      lost += ailment.kind().equals("none") && mark.marks().total() < mark.marks().of() ? 1 : 0;
      finder.count(ailment, places(mark, setup));
      own.count(ailment, places(mark, setup));
      missed(ailment, most, mark, setup);
      if (ailment.kind().equals("none")
          || ailment.slip().how() != Ailment.How.NONE
          || shows.of(truth)) {
        ask(setup, ailment, visit, read, mark);
      }
    }
    twice(setup, ailments, shows);
    out.printf(Locale.ROOT, "%-16s %d kinds of ailment%n", setup.name(), ailments.size());
    out.println("  finder " + own.line());
    out.println("  best   " + ownBest.line());
  }

  /** Builds with two faults that both matter: mending either changes some reading. */
  private void twice(Setup setup, List<Ailment> ailments, Shows shows) {
    for (int i = 0; i < builds / 2; ) {
      Ailment one = drawn(ailments);
      Ailment other = drawn(ailments);
      if (one.slip().how() != Ailment.How.NONE
          || other.slip().how() != Ailment.How.NONE
          || one.kind().equals("none")
          || other.kind().equals("none")
          || one.places().stream().anyMatch(other.places()::contains)) {
        continue;
      }
      Ailment both = one.and(other);
      Truth truth = both.truth(setup, random);
      if (!shows.inReadings(truth, one.truth(setup, random))
          || !shows.inReadings(truth, other.truth(setup, random))) {
        continue;
      }
      i++;
      Mark mark = mark(setup, new Visit(truth, random).readings(), List.of());
      twoFaults.count(both, places(mark, setup));
      missed(both, Map.of(both.places(), 1.0), mark, setup);
    }
  }

  private Ailment drawn(List<Ailment> ailments) {
    double u = random.nextDouble();
    for (Ailment ailment : ailments) {
      u -= ailment.prior();
      if (u < 0) {
        return ailment;
      }
    }
    return ailments.get(0);
  }

  private Mark mark(Setup setup, Map<String, Value> read, List<Extra> extra) {
    Map<String, Written> written = new LinkedHashMap<>();
    read.forEach((id, value) -> written.put(id, Written.text(value.text())));
    Exercise exercise = setup.exercise();
    var record =
        new BenchRecord(
            exercise.slug(), exercise.meter(), Optional.of(setup.build()), written, extra);
    long start = cpu();
    Mark mark = Marking.mark(exercise, record, Priors.start(), ask);
    nanos += cpu() - start;
    marks++;
    return mark;
  }

  /** Time that this thread has had a processor for, whatever else the machine does (ns). */
  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static Map<List<String>, Double> places(Mark mark, Setup setup) {
    Map<List<String>, Double> places = new LinkedHashMap<>();
    for (Suspect suspect : mark.diagnosis().suspects()) {
      places.put(Places.of(suspect.place(), setup.exercise().board()), suspect.probability());
    }
    return places;
  }

  /** Counts what was said instead where the best possible was right and the finder was not. */
  private void missed(Ailment ailment, Map<List<String>, Double> most, Mark mark, Setup setup) {
    Suspect first = mark.diagnosis().suspects().get(0);
    List<String> said = Places.of(first.place(), setup.exercise().board());
    if (said.stream().noneMatch(ailment.places()::contains)
        && ailment.places().equals(most.keySet().iterator().next())) {
      missed.merge(
          setup.name()
              + ": "
              + ailment.kind()
              + " at "
              + ailment.places()
              + ", said "
              + first.likeliest().kind()
              + " at "
              + said,
          1,
          Integer::sum);
    }
  }

  private void ask(Setup setup, Ailment ailment, Visit visit, Map<String, Value> read, Mark first) {
    var extra = new ArrayList<Extra>();
    Mark mark = first;
    for (Tally tally : List.of(afterOne, afterTwo)) {
      Optional<NextReading> next = mark.diagnosis().next();
      if (next.isPresent()) {
        Occasion when = Occasion.in(next.get().when());
        Optional<Value> answer = visit.read(next.get().measure(), setup.exercise().condition(when));
        if (answer.isPresent()) {
          Written text = Written.text(answer.get().text());
          extra.add(new Extra("x" + extra.size(), next.get().measure(), when, text));
          Mark more = mark(setup, read, extra);
          askings.count(extra.size() - 1, next.get(), mark, more);
          mark = more;
        }
      }
      tally.count(ailment, places(mark, setup));
    }
  }

  private void print() {
    out.println("all");
    out.println("  finder " + finder.line());
    out.println("  best   " + best.line());
    out.printf(
        Locale.ROOT,
        "  finder over best: first %.3f  first three %.3f%n",
        finder.first() / best.first(),
        finder.firstThree() / best.firstThree());
    out.println("  after one asked " + afterOne.line());
    out.println("  after two asked " + afterTwo.line());
    out.println("  two faults      " + twoFaults.line());
    askings.lines().forEach(out::println);
    out.printf(
        Locale.ROOT,
        "  sound builds that lost marks: %d; %.1f ms of a processor a mark over %d marks%n",
        lost,
        nanos / 1e6 / marks,
        marks);
    out.println("wrong where the best possible was right");
    missed.forEach((what, times) -> out.println("  " + times + "  " + what));
    out.println("finder by kind");
    finder.kinds().forEach(out::println);
    out.println("best by kind");
    best.kinds().forEach(out::println);
    out.println("finder by kind after two asked");
    afterTwo.kinds().forEach(out::println);
  }
}
