package org.holewise.benchmark;

import static org.holewise.engine.exercise.ExerciseDraft.amps;
import static org.holewise.engine.exercise.ExerciseDraft.seen;
import static org.holewise.engine.exercise.ExerciseDraft.volts;

import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.exercise.BenchDraft;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.marking.Mark;
import org.holewise.engine.marking.Marking;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One whole mark: ten parts, all hypotheses, the next reading. The median counts. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class MarkBenchmark {
  private final Exercise exercise = tenParts().exercise();
  private final BenchRecord sound = bench("8.99 V", "0.71 V", "0.08 V", "6.71 V", "20.1 mA", "lit");
  private final BenchRecord faulty =
      bench("8.99 V", "0.00 V", "8.97 V", "0.02 V", "0.00 mA", "dark");

  /** A button that switches a lamp through a transistor, with a divider beside it. */
  static ExerciseDraft tenParts() {
    return new ExerciseDraft()
        .part("B1", "battery", "volts", 9)
        .part("S1", "switch", "closed", true)
        .part("S2", "button", "closed", true)
        .part("R1", "resistor", "ohms", 10e3)
        .part("R2", "resistor", "ohms", 100e3)
        .part("R3", "resistor", "ohms", 330)
        .part("R4", "resistor", "ohms", 4.7e3)
        .part("R5", "resistor", "ohms", 4.7e3)
        .part("D1", "led", "colour", "red")
        .part("Q1", "npn")
        .net("battery", "B1.+ S1.1")
        .net("supply", "S1.2 S2.1 R3.1 R4.1")
        .net("pressed", "S2.2 R1.1")
        .net("base", "R1.2 R2.1 Q1.b")
        .net("lamp", "R3.2 D1.a")
        .net("collector", "D1.k Q1.c")
        .net("half", "R4.2 R5.1")
        .net("return", "Q1.e R2.2 R5.2 B1.-")
        .condition("pressed")
        .condition("released", new Condition.Setting("S2", "closed", false))
        .reading("supply", volts("B1.+", "B1.-"))
        .reading("base", volts("Q1.b", "Q1.e"))
        .reading("collector", volts("Q1.c", "Q1.e"))
        .reading("drop", volts("R3.1", "R3.2"))
        .reading("loop", amps("R3.1"))
        .reading("glow", seen("D1"));
  }

  private BenchRecord bench(String... readings) {
    return bench(exercise, readings);
  }

  static BenchRecord bench(Exercise exercise, String... readings) {
    BenchDraft draft =
        new BenchDraft(exercise)
            .place("B1", "+a3 -a3")
            .place("S1", "a5 a7")
            .place("S2", "e10 f10 e12 f12")
            .place("R1", "d12 d16")
            .place("R2", "b16 b20")
            .place("R3", "g10 g15")
            .place("D1", "h15 h17")
            .place("Q1", "d17 d16 d18")
            .place("R4", "i10 i22")
            .place("R5", "h22 h26")
            .link("b5", "+a5")
            .link("b7", "b10")
            .link("g17", "c17")
            .link("a18", "-a18")
            .link("a20", "-a20")
            .link("j26", "-j26")
            .link("-j3", "-a4");
    for (int i = 0; i < readings.length; i++) {
      draft.read(exercise.readings().get(i).id(), readings[i]);
    }
    return draft.record();
  }

  @Benchmark
  public Mark soundBuild() {
    return Marking.mark(exercise, sound, Priors.start(), Set.of());
  }

  @Benchmark
  public Mark faultyBuild() {
    return Marking.mark(exercise, faulty, Priors.start(), Set.of());
  }
}
