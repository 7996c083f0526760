package org.holewise.benchmark;

import java.util.concurrent.TimeUnit;
import org.holewise.engine.solver.Circuit;
import org.holewise.engine.solver.OperatingPointSolver;
import org.holewise.engine.solver.Outcome;
import org.holewise.engine.solver.Workload;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How the time of an operating point grows with the parts. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class LadderBenchmark {
  @Param({"10", "20", "40", "80", "160"})
  private int parts;

  private Circuit circuit = Workload.ladder(2);

  @Setup
  public void build() {
    circuit = Workload.ladder(parts);
  }

  @Benchmark
  public Outcome ladder() {
    return OperatingPointSolver.solve(circuit);
  }
}
