package org.holewise.benchmark;

import static org.holewise.engine.exercise.ExerciseDraft.amps;
import static org.holewise.engine.exercise.ExerciseDraft.seen;
import static org.holewise.engine.exercise.ExerciseDraft.volts;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.holewise.engine.diagnosis.Layout;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.netlist.Schematic;
import org.holewise.engine.reading.Assembly;
import org.holewise.engine.reading.Judge;
import org.holewise.engine.reading.Judged;
import org.holewise.engine.reading.Meter;
import org.holewise.engine.reading.Meters;
import org.holewise.engine.wiring.WiringComparison;
import org.holewise.engine.wiring.WiringReport;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A mark without the fault finder: nets, comparison, and the bands and verdicts of ten readings, in
 * two conditions, of a circuit that bends. The median counts, once the compiler is through with it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 14, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class VerdictBenchmark {
  private final Exercise exercise =
      MarkBenchmark.tenParts()
          .reading("half", volts("R5.1", "R5.2"))
          .reading("lamp", volts("D1.a", "D1.k"))
          .reading("drive", amps("R1.1"))
          .reading("dark", seen("D1"), "released", 1)
          .exercise();
  private final Meter meter = Meters.named(exercise.meter()).orElseThrow();
  private final BenchRecord sound =
      MarkBenchmark.bench(
          exercise, "8.99 V", "0.71 V", "0.08 V", "6.71 V", "20.1 mA", "lit", "4.49 V", "2.05 V",
          "0.82 mA", "dark");

  /** What a mark says without the fault finder. */
  public record Verdicts(WiringReport wiring, List<Judged> readings) {}

  @Benchmark
  public Verdicts verdicts() {
    Assembly wanted = Assembly.of(exercise, Schematic.netlist(exercise), Assembly.HoleNets.NONE);
    Layout layout = Layout.of(sound.build().orElseThrow(), exercise.parts());
    Assembly asBuilt = Assembly.of(exercise, layout.nets().netlist(), layout.nets()::netAt);
    return new Verdicts(
        WiringComparison.compare(exercise, layout.build()),
        new Judge(exercise, meter, sound.readings()).judge(wanted, asBuilt));
  }
}
