package org.holewise.benchmark;

import java.io.PrintStream;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.CommandLineOptions;

/**
 * Runs the benchmarks that the arguments name and says last, for those that have a target, how they
 * stand to it. Times depend on the machine; a ratio within one run hardly does.
 */
public final class Benchmarks {
  private final Collection<RunResult> results;
  private final PrintStream out;

  private Benchmarks(Collection<RunResult> results, PrintStream out) {
    this.results = results;
    this.out = out;
  }

  public static void main(String[] args) throws Exception {
    new Benchmarks(new Runner(new CommandLineOptions(args)).run(), System.out).say();
  }

  private void say() {
    var solved = score("OperatingPointBenchmark.solved", "");
    var bare = score("OperatingPointBenchmark.bare", "");
    say("operating point, as a multiple of bare factorisations", over(solved, bare), "at most 3");
    say("a mark without the fault finder, median (ms)", median("VerdictBenchmark"), "below 1");
    say("nets of a full board (µs)", score("ExtractionBenchmark", ""), "below 20");
    var most = over(score("LadderBenchmark", "160"), score("LadderBenchmark", "40"));
    if (most.isPresent()) {
      double exponent = Math.log(most.getAsDouble()) / Math.log(4);
      say("exponent of a ladder from 40 to 160 parts", OptionalDouble.of(exponent), "at most 2.3");
    }
  }

  private void say(String what, OptionalDouble value, String target) {
    if (value.isPresent()) {
      out.printf(Locale.ROOT, "%s: %.3g (target: %s)%n", what, value.getAsDouble(), target);
    }
  }

  private static OptionalDouble over(OptionalDouble one, OptionalDouble other) {
    return one.isPresent() && other.isPresent()
        ? OptionalDouble.of(one.getAsDouble() / other.getAsDouble())
        : OptionalDouble.empty();
  }

  private OptionalDouble score(String name, String parts) {
    return of(name, parts).stream().mapToDouble(run -> run.getPrimaryResult().getScore()).min();
  }

  private OptionalDouble median(String name) {
    return of(name, "").stream()
        .mapToDouble(run -> run.getPrimaryResult().getStatistics().getPercentile(50))
        .min();
  }

  private List<RunResult> of(String name, String parts) {
    return results.stream()
        .filter(run -> run.getParams().getBenchmark().contains("." + name))
        .filter(run -> parts.isEmpty() || run.getParams().getParam("parts").equals(parts))
        .toList();
  }
}
