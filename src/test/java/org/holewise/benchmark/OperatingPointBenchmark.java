package org.holewise.benchmark;

import java.util.concurrent.TimeUnit;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Forty nets with ten junctions from nothing, beside as many bare factorisations and solves of a
 * matrix of that size as the search takes turns.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class OperatingPointBenchmark {
  private final Circuit circuit = Workload.fortyNets();
  private final int turns = Workload.turns(circuit);
  private final DMatrixRMaj jacobian = Workload.jacobian(circuit);
  private final DMatrixRMaj matrix = jacobian.copy();
  private final DMatrixRMaj right = new DMatrixRMaj(jacobian.numRows, 1);
  private final DMatrixRMaj left = right.copy();
  private final LinearSolverDense<DMatrixRMaj> bare = LinearSolverFactory_DDRM.lu(jacobian.numRows);

  @Benchmark
  public Outcome solved() {
    return OperatingPointSolver.solve(circuit);
  }

  @Benchmark
  public double bare() {
    double sum = 0;
    for (int turn = 0; turn < turns; turn++) {
      matrix.setTo(jacobian);
      right.fill(1);
      if (!bare.setA(matrix)) {
        throw new IllegalStateException("singular");
      }
      bare.solve(right, left);
      sum += left.data[0];
    }
    return sum;
  }
}
