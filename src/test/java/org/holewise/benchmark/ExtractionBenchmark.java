package org.holewise.benchmark;

import java.util.concurrent.TimeUnit;
import org.holewise.engine.board.Build;
import org.holewise.engine.exercise.BenchDraft;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.netlist.AsBuilt;
import org.holewise.engine.netlist.Netlist;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The nets of a full board: thirty parts with sixty leads, and thirty links. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class ExtractionBenchmark {
  private static final int PARTS = 30;

  private final Exercise exercise = exercise();
  private final Build build = build();

  private static Exercise exercise() {
    var draft = new ExerciseDraft();
    for (int k = 1; k <= PARTS; k++) {
      draft.part("R" + k, "resistor", "ohms", 100 * k);
    }
    return draft.exercise();
  }

  private Build build() {
    var draft = new BenchDraft(exercise);
    for (int k = 1; k <= PARTS; k++) {
      draft.place("R" + k, "b%d g%d".formatted(2 * k - 1, 2 * k));
      draft.link("d" + (2 * k - 1), "d" + 2 * k);
    }
    return draft.record().build().orElseThrow();
  }

  @Benchmark
  public Netlist extracted() {
    return AsBuilt.netlist(build, exercise.parts());
  }
}
