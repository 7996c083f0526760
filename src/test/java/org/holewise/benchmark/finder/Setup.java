package org.holewise.benchmark.finder;

import static org.holewise.engine.exercise.ExerciseDraft.amps;
import static org.holewise.engine.exercise.ExerciseDraft.seen;
import static org.holewise.engine.exercise.ExerciseDraft.volts;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.BenchDraft;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.school.sheet.Shipped;

/** An exercise with a build of it that is right. */
record Setup(String name, Exercise exercise, Build build) {

  /** Five circuits of a first course with four or five readings each. */
  static List<Setup> five() {
    return List.of(lamp(), ladder(), amplifier(), transistorSwitch(), follower());
  }

  /** Exercises of the library in which only volts, amperes and lamps are read. */
  static List<Setup> shipped() {
    return List.of("stage-moonlight", "stage-dimmer", "stage-cue", "stage-bridge").stream()
        .map(
            slug ->
                of(
                    slug,
                    Shipped.exercise(slug),
                    Shipped.entry(slug).checked().build().orElseThrow()))
        .toList();
  }

  private static Setup of(String name, Exercise exercise, Build build) {
    var placed = new ArrayList<Placed>();
    build
        .placed()
        .forEach(part -> placed.add(part.seated(exercise.part(part.ref()).orElseThrow())));
    return new Setup(name, exercise, new Build(build.board(), placed, build.links()));
  }

  private static Setup of(String name, Exercise exercise, BenchDraft draft) {
    return of(name, exercise, draft.record().build().orElseThrow());
  }

  private static Setup lamp() {
    Exercise exercise =
        new ExerciseDraft()
            .part("B1", "battery", "volts", 6, "internal", 1)
            .part("S1", "switch", "closed", true)
            .part("R1", "resistor", "ohms", 330)
            .part("D1", "led", "colour", "yellow")
            .net("supply", "B1.+ S1.1")
            .net("fed", "S1.2 R1.1")
            .net("lamp", "R1.2 D1.a")
            .net("return", "D1.k B1.-")
            .reading("supply", volts("B1.+", "B1.-"))
            .reading("fed", volts("R1.1", "B1.-"))
            .reading("drop", volts("R1.1", "R1.2"))
            .reading("lamp", volts("D1.a", "D1.k"))
            .reading("loop", amps("R1.1"))
            .exercise();
    return of(
        "lamp",
        exercise,
        new BenchDraft(exercise)
            .place("B1", "+j3 -j3")
            .place("S1", "c40 c42")
            .place("R1", "b42 b46")
            .place("D1", "c46 c48")
            .link("+j31", "+j34")
            .link("+j40", "a40")
            .link("a48", "-a48")
            .link("-a46", "-j28"));
  }

  private static Setup ladder() {
    Exercise exercise =
        new ExerciseDraft()
            .part("P1", "supply", "volts", 9)
            .part("R1", "resistor", "ohms", 1000)
            .part("R2", "resistor", "ohms", 2200)
            .part("R3", "resistor", "ohms", 1500)
            .part("R4", "resistor", "ohms", 3300)
            .part("R5", "resistor", "ohms", 4700)
            .net("top", "P1.+ R1.1")
            .net("one", "R1.2 R2.1 R3.1")
            .net("two", "R3.2 R4.1 R5.1")
            .net("return", "P1.- R2.2 R4.2 R5.2")
            .reading("supply", volts("P1.+", "P1.-"))
            .reading("one", volts("R2.1", "R2.2"))
            .reading("two", volts("R4.1", "R4.2"))
            .reading("through", volts("R3.1", "R3.2"))
            .reading("all", amps("R1.1"))
            .exercise();
    return of(
        "ladder",
        exercise,
        new BenchDraft(exercise)
            .place("P1", "+a3 -a3")
            .place("R1", "b10 b14")
            .place("R2", "c14 c18")
            .place("R3", "d14 d20")
            .place("R4", "c20 c24")
            .place("R5", "e20 e26")
            .link("+a10", "a10")
            .link("a18", "-a18")
            .link("a24", "-a24")
            .link("a26", "-a26"));
  }

  private static Setup amplifier() {
    Exercise exercise =
        new ExerciseDraft()
            .part("B1", "battery", "volts", 9, "internal", 2)
            .part("R1", "resistor", "ohms", 33e3)
            .part("R2", "resistor", "ohms", 6800)
            .part("R3", "resistor", "ohms", 2200)
            .part("R4", "resistor", "ohms", 470)
            .part("Q1", "npn")
            .net("supply", "B1.+ R1.1 R3.1")
            .net("base", "R1.2 R2.1 Q1.b")
            .net("collector", "R3.2 Q1.c")
            .net("emitter", "Q1.e R4.1")
            .net("return", "R2.2 R4.2 B1.-")
            .reading("supply", volts("B1.+", "B1.-"))
            .reading("base", volts("Q1.b", "B1.-"))
            .reading("emitter", volts("Q1.e", "B1.-"))
            .reading("collector", volts("Q1.c", "B1.-"))
            .exercise();
    return of(
        "amplifier",
        exercise,
        new BenchDraft(exercise)
            .place("B1", "+a3 -a3")
            .place("R1", "+a20 c20")
            .place("R2", "d20 d24")
            .place("R3", "+a19 b19")
            .place("Q1", "c19 e20 c21")
            .place("R4", "d21 d26")
            .link("a24", "-a24")
            .link("a26", "-a26"));
  }

  private static Setup transistorSwitch() {
    Exercise exercise =
        new ExerciseDraft()
            .part("B1", "battery", "volts", 9, "internal", 2)
            .part("S1", "switch", "closed", true)
            .part("R1", "resistor", "ohms", 22e3)
            .part("R2", "resistor", "ohms", 470)
            .part("D1", "led", "colour", "red")
            .part("Q1", "npn")
            .net("supply", "B1.+ S1.1 R2.1")
            .net("pressed", "S1.2 R1.1")
            .net("base", "R1.2 Q1.b")
            .net("lamp", "R2.2 D1.a")
            .net("collector", "D1.k Q1.c")
            .net("return", "Q1.e B1.-")
            .reading("supply", volts("B1.+", "B1.-"))
            .reading("base", volts("Q1.b", "Q1.e"))
            .reading("collector", volts("Q1.c", "Q1.e"))
            .reading("drop", volts("R2.1", "R2.2"))
            .reading("glow", seen("D1"))
            .exercise();
    return of(
        "switch",
        exercise,
        new BenchDraft(exercise)
            .place("B1", "+a3 -a3")
            .place("S1", "b38 b40")
            .place("R1", "c40 c44")
            .place("R2", "+a48 b48")
            .place("D1", "c48 c46")
            .place("Q1", "d46 d44 d47")
            .link("+a31", "+a33")
            .link("+a38", "a38")
            .link("a47", "-a47")
            .link("-a30", "-a34"));
  }

  private static Setup follower() {
    Exercise exercise =
        new ExerciseDraft()
            .part("B1", "battery", "volts", 9)
            .part("R1", "resistor", "ohms", 10e3)
            .part("R2", "resistor", "ohms", 4700)
            .part("R3", "resistor", "ohms", 10e3)
            .part("R4", "resistor", "ohms", 6800)
            .part("U1", "dual-opamp")
            .net("supply", "B1.+ R1.1 U1.8")
            .net("in", "R1.2 R2.1 U1.3")
            .net("feedback", "U1.2 R3.1 R4.1")
            .net("out", "U1.1 R4.2")
            .net("return", "B1.- R2.2 R3.2 U1.4")
            .reading("supply", volts("B1.+", "B1.-"))
            .reading("in", volts("U1.3", "B1.-"))
            .reading("feedback", volts("U1.2", "B1.-"))
            .reading("out", volts("U1.1", "B1.-"))
            .exercise();
    return of(
        "op-amp",
        exercise,
        new BenchDraft(exercise)
            .place("B1", "+a3 -a3")
            .place("U1", "e20 e21 e22 e23 f23 f22 f21 f20")
            .place("R1", "+a22 b22")
            .place("R2", "c22 c26")
            .place("R3", "c21 c27")
            .place("R4", "b20 b21")
            .link("a26", "-a26")
            .link("a27", "-a27")
            .link("a23", "-a23")
            .link("g20", "+a20"));
  }
}
