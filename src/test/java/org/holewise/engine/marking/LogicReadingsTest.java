package org.holewise.engine.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.board.Finding;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.part.Pin;
import org.holewise.engine.reading.Judged;
import org.holewise.engine.reading.Shown;
import org.holewise.engine.reading.Verdict;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is read of logic that is wired as its schematic has it. */
@Tag("fast")
class LogicReadingsTest {

  private static Mark mark(Exercise exercise, String... idsAndTexts) {
    Map<String, Written> readings = new LinkedHashMap<>();
    for (int i = 0; i < idsAndTexts.length; i += 2) {
      readings.put(idsAndTexts[i], Written.text(idsAndTexts[i + 1]));
    }
    return Marking.mark(
        exercise,
        new BenchRecord(exercise.slug(), exercise.meter(), Optional.empty(), readings, List.of()),
        Priors.start(),
        Set.of());
  }

  private static Measure level(String pin) {
    return new Measure.Level(Pin.read(pin).orElseThrow());
  }

  private static String expected(Mark mark, int reading) {
    Shown shown = mark.readings().get(reading).wanted().orElseThrow().shown();
    return shown instanceof Shown.Word word ? word.word() : shown.toString();
  }

  private static ExerciseDraft supplied(double volts) {
    return new ExerciseDraft().part("B1", "supply", "volts", volts, "limit", 0.1);
  }

  /** A gate through a resistor into a transistor with a lamp, as in the textbooks. */
  @ParameterizedTest
  @CsvSource({"B1.+, dark", "B1.-, lit"})
  void aGateSwitchesALampThroughATransistor(String input, String seen) {
    String plus = "B1.+ U1.14 R2.1" + (input.equals("B1.+") ? " U1.1" : "");
    String minus = "B1.- U1.7 Q1.e" + (input.equals("B1.-") ? " U1.1" : "");
    Exercise exercise =
        supplied(5.0)
            .part("U1", "7404")
            .part("R1", "resistor", "ohms", 10_000)
            .part("R2", "resistor", "ohms", 330)
            .part("D1", "led")
            .part("Q1", "npn")
            .net("plus", plus)
            .net("minus", minus)
            .net("gate", "U1.2 R1.1")
            .net("base", "R1.2 Q1.b")
            .net("lamp", "R2.2 D1.a")
            .net("collector", "D1.k Q1.c")
            .reading("glow", ExerciseDraft.seen("D1"))
            .reading("out", level("U1.2"))
            .exercise();
    Mark mark = mark(exercise, "glow", seen, "out", seen.equals("lit") ? "H" : "L");
    assertThat(expected(mark, 0)).isEqualTo(seen);
    assertThat(mark.readings()).extracting(Judged::verdict).containsOnly(Verdict.WITHIN);
  }

  /** MM74HC04 at 4.5 V: between 1.35 and 3.15 V a level is neither. */
  @ParameterizedTest
  @CsvSource({"10000, 1000, L", "1000, 10000, H", "10000, 10000, undefined"})
  void aDividersVoltageIsReadAgainstTheThresholds(int upper, int lower, String level) {
    Exercise exercise =
        supplied(4.5)
            .part("U1", "7404")
            .part("R1", "resistor", "ohms", upper)
            .part("R2", "resistor", "ohms", lower)
            .net("plus", "B1.+ U1.14 R1.1")
            .net("minus", "B1.- U1.7 R2.2")
            .net("in", "R1.2 R2.1 U1.1")
            .reading("in", level("U1.1"))
            .exercise();
    Mark mark = mark(exercise, "in", level);
    assertThat(expected(mark, 0)).isEqualTo(level);
    assertThat(mark.readings().get(0).verdict()).isEqualTo(Verdict.WITHIN);
    assertThat(mark(exercise, "in", level.equals("H") ? "L" : "H").readings().get(0).verdict())
        .isEqualTo(Verdict.OUTSIDE);
  }

  @Test
  void nobodyIsWrongAboutAnInputThatNothingDrives() {
    Exercise exercise =
        supplied(5.0)
            .part("U1", "7404")
            .net("plus", "B1.+ U1.14")
            .net("minus", "B1.- U1.7")
            .reading("in", level("U1.1"))
            .reading("out", level("U1.2"))
            .exercise();
    Mark mark = mark(exercise, "in", "H", "out", "L");
    assertThat(expected(mark, 0)).isEqualTo("undefined");
    assertThat(expected(mark, 1)).isEqualTo("undefined");
    assertThat(mark.readings()).extracting(Judged::verdict).containsOnly(Verdict.WITHIN);
  }

  private static Exercise blinker(double farads) {
    return supplied(5.0)
        .part("U1", "555")
        .part("R1", "resistor", "ohms", 10_000)
        .part("R2", "resistor", "ohms", 47_000)
        .part("C1", "capacitor", "farads", farads)
        .part("R3", "resistor", "ohms", 470)
        .part("D1", "led")
        .net("plus", "B1.+ U1.8 U1.4 R1.1")
        .net("minus", "B1.- U1.1 C1.2 D1.k")
        .net("discharge", "R1.2 R2.1 U1.7")
        .net("timing", "R2.2 C1.1 U1.2 U1.6")
        .net("out", "U1.3 R3.1")
        .net("lamp", "R3.2 D1.a")
        .reading("glow", ExerciseDraft.seen("D1"))
        .exercise();
  }

  @Test
  void aLampOnASlowTimerFlickersAndOnAFastOneIsLit() {
    Mark slow = mark(blinker(10e-6), "glow", "flickering");
    assertThat(expected(slow, 0)).isEqualTo("flickering");
    assertThat(slow.readings().get(0).verdict()).isEqualTo(Verdict.WITHIN);
    assertThat(mark(blinker(10e-6), "glow", "dark").readings().get(0).verdict())
        .isEqualTo(Verdict.OUTSIDE);
    assertThat(expected(mark(blinker(10e-9), "glow", "lit"), 0)).isEqualTo("lit");
  }

  @Test
  void outputsThatClashAndRingsThatSwingAreFound() {
    Exercise clash =
        supplied(5.0)
            .part("U1", "7404")
            .net("plus", "B1.+ U1.14 U1.1")
            .net("minus", "B1.- U1.7 U1.3")
            .net("fight", "U1.2 U1.4")
            .exercise();
    assertThat(mark(clash).findings()).extracting(Finding::kind).contains("outputs-clash");
    Exercise ring =
        supplied(5.0)
            .part("U1", "7404")
            .net("plus", "B1.+ U1.14")
            .net("minus", "B1.- U1.7")
            .net("ring", "U1.1 U1.2")
            .exercise();
    assertThat(mark(ring).findings()).extracting(Finding::kind).contains("oscillates");
  }

  /** Absolute maximum of SN74HC04 (SCLS078): 7 V; CD4017B (SCHS027): 20 V. */
  @ParameterizedTest
  @CsvSource({"7404, 9, chip-supply-high", "7404, 5, ''", "4017, 9, ''"})
  void aSupplyBeyondWhatAChipStandsIsCautioned(String kind, double volts, String caution) {
    String plus = kind.equals("4017") ? "16" : "14";
    String minus = kind.equals("4017") ? "8" : "7";
    Exercise exercise =
        supplied(volts)
            .part("U1", kind)
            .net("plus", "B1.+ U1." + plus)
            .net("minus", "B1.- U1." + minus)
            .exercise();
    assertThat(mark(exercise).cautions().stream().map(Caution::kind).toList())
        .isEqualTo(caution.isEmpty() ? List.of() : List.of(caution));
  }

  @Test
  void aSupplyTheWrongWayRoundIsCautioned() {
    Exercise exercise =
        supplied(5.0)
            .part("U1", "7404")
            .net("plus", "B1.+ U1.7")
            .net("minus", "B1.- U1.14")
            .exercise();
    assertThat(mark(exercise).cautions())
        .extracting(Caution::kind)
        .contains("chip-supply-reversed");
  }
}
