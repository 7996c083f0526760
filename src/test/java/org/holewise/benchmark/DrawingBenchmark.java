package org.holewise.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.holewise.document.ExerciseDocument;
import org.holewise.drawing.SchematicDrawing;
import org.holewise.drawing.sheet.Drawn;
import org.holewise.drawing.sheet.SymbolStyle;
import org.holewise.engine.exercise.Exercise;
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
 * One schematic drawn, each exercise that comes along in turn: the median and the 95th percentile
 * count, to be under 30 ms and 150 ms.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class DrawingBenchmark {
  private final List<Exercise> exercises = exercises();
  private int next;

  private static List<Exercise> exercises() {
    try (var files = Files.list(Path.of("src/main/resources/exercises"))) {
      return files
          .filter(file -> file.toString().endsWith(".yaml"))
          .sorted()
          .map(DrawingBenchmark::exercise)
          .toList();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Exercise exercise(Path file) {
    try {
      return ExerciseDocument.yaml(Files.readString(file)).orThrow().exercise();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Benchmark
  public Drawn oneOfTheLibrary() {
    next = (next + 1) % exercises.size();
    return SchematicDrawing.of(exercises.get(next), SymbolStyle.IEC);
  }
}
