package org.holewise.engine.marking;

import static org.holewise.engine.exercise.ExerciseDraft.amps;
import static org.holewise.engine.exercise.ExerciseDraft.seen;
import static org.holewise.engine.exercise.ExerciseDraft.volts;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.holewise.engine.exercise.BenchDraft;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.netlist.AsBuilt;
import org.holewise.engine.netlist.Netlist;
import org.holewise.engine.netlist.Schematic;
import org.holewise.engine.reading.Assembly;
import org.holewise.engine.reading.Bench;
import org.holewise.engine.reading.Function;
import org.holewise.engine.reading.Instrument;
import org.holewise.engine.reading.Meters;
import org.holewise.engine.reading.Shown;

/** Exercises and sound builds that the tests of marking share. */
final class Samples {

  private Samples() {}

  /** A lamp behind a resistor and a switch on five volts. */
  static Exercise lamp() {
    return lamp(5);
  }

  static Exercise lamp(double volts) {
    return new ExerciseDraft()
        .part("B1", "battery", "volts", volts, "internal", 1)
        .part("S1", "switch", "closed", true)
        .part("R1", "resistor", "ohms", 330)
        .part("D1", "led", "colour", "red")
        .net("supply", "B1.+ S1.1")
        .net("fed", "S1.2 R1.1")
        .net("lamp", "R1.2 D1.a")
        .net("return", "D1.k B1.-")
        .condition("lit")
        .condition("dark", new Condition.Setting("S1", "closed", false))
        .reading("supply", volts("B1.+", "B1.-"))
        .reading("lamp", volts("D1.a", "D1.k"), 2)
        .reading("drop", volts("R1.1", "R1.2"))
        .reading("loop", amps("R1.1"))
        .reading("glow", seen("D1"))
        .reading("off", volts("D1.a", "D1.k"), "dark", 1)
        .exercise();
  }

  static BenchDraft lampBuild(Exercise exercise) {
    return new BenchDraft(exercise)
        .place("B1", "+a3 -a3")
        .place("S1", "c6 c9")
        .place("R1", "d9 d14")
        .place("D1", "e14 e16")
        .link("a6", "+a6")
        .link("a16", "-a15");
  }

  /** A ladder of five resistors, two pairs of them equal. */
  static Exercise ladder(double volts) {
    return new ExerciseDraft()
        .part("B1", "battery", "volts", volts)
        .part("R1", "resistor", "ohms", 1e3)
        .part("R2", "resistor", "ohms", 2.2e3)
        .part("R3", "resistor", "ohms", 1e3)
        .part("R4", "resistor", "ohms", 2.2e3)
        .part("R5", "resistor", "ohms", 4.7e3)
        .net("top", "B1.+ R1.1")
        .net("first", "R1.2 R2.1 R3.1")
        .net("second", "R3.2 R4.1 R5.1")
        .net("return", "R2.2 R4.2 R5.2 B1.-")
        .reading("supply", volts("B1.+", "B1.-"))
        .reading("first", volts("R2.1", "B1.-"))
        .reading("second", volts("R4.1", "B1.-"))
        .reading("drop", volts("R3.1", "R3.2"))
        .exercise();
  }

  static BenchDraft ladderBuild(Exercise exercise) {
    return new BenchDraft(exercise)
        .place("B1", "+j4 -j4")
        .place("R1", "i10 i15")
        .place("R2", "h15 c15")
        .place("R3", "g15 g20")
        .place("R4", "h20 c20")
        .place("R5", "i20 b21")
        .link("j10", "+j10")
        .link("a15", "-a15")
        .link("a20", "-a20")
        .link("a21", "-a21")
        .link("-a5", "-j5");
  }

  /** The nominal readings of what the draft says, written into it. */
  static BenchRecord read(Exercise exercise, BenchDraft draft) {
    readings(exercise, Schematic.netlist(exercise)).forEach(draft::read);
    return draft.record();
  }

  /** The same record with what its own layout would read. */
  static BenchRecord readAsBuilt(Exercise exercise, BenchRecord record) {
    Map<String, Written> written = new LinkedHashMap<>();
    readings(exercise, AsBuilt.netlist(record.build().orElseThrow(), exercise.parts()))
        .forEach((id, text) -> written.put(id, Written.text(text)));
    return new BenchRecord(
        record.exercise(), record.meter(), record.build(), written, record.extra());
  }

  private static Map<String, String> readings(Exercise exercise, Netlist netlist) {
    var meter = Meters.named("hand-2000").orElseThrow();
    var bench = Bench.of(Assembly.of(exercise, netlist, Assembly.HoleNets.NONE));
    var texts = new LinkedHashMap<String, String>();
    for (var reading : exercise.readings()) {
      var forecast =
          new Instrument(meter)
              .read(bench, reading.measure(), exercise.condition(reading.occasion()))
              .orElseThrow();
      if (forecast.shown(meter) instanceof Shown.Word word) {
        texts.put(reading.id(), word.word());
      } else {
        String unit = forecast.function() == Function.AMPS ? " mA" : " V";
        double scale = unit.equals(" mA") ? 1e3 : 1;
        double count = meter.resolution(forecast.function(), forecast.value());
        double rounded = Math.rint(forecast.value() / count) * count * scale;
        texts.put(reading.id(), String.format(Locale.ROOT, "%.4f", rounded) + unit);
      }
    }
    return texts;
  }
}
