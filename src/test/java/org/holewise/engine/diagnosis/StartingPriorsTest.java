package org.holewise.engine.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.netlist.Schematic;
import org.holewise.engine.reading.Assembly;
import org.holewise.engine.wiring.WiringReport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the fault finder believes before it has seen anything. No table of faults on a bench by kind
 * was found in print: the shares are the project's judgement. How a dead part is dead is by
 * MIL-HDBK-338B, table of failure mode distributions (from memory).
 */
@Tag("fast")
class StartingPriorsTest {
  private static final Priors START = Priors.start();

  @ParameterizedTest
  @CsvSource({
    "0.22, WRONG_HOLE, ",
    "0.10, LEAD_CONTACT, ",
    "0.10, LINK_CONTACT, ",
    "0.14, WRONG_VALUE, EXCHANGED",
    "0.08, RAIL_GAP, ",
    "0.09, REVERSED, ",
    "0.03, SUPPLY_OFF, ",
    "0.05, SUPPLY_LOW, ",
    "0.02, SUPPLY_REVERSED, ",
    "0.10, METER, READINGS",
    "0.05, PINS, ",
    "0.03, TOUCHING, LEFTOVER",
    "0.03, DEAD_PART, "
  })
  void kindsHaveTheSharesOfTheJudgement(double share, Family one, Family other) {
    double sum = START.share(one) + Optional.ofNullable(other).map(START::share).orElse(0.0);
    assertThat(sum).isEqualTo(share, within(1e-12));
  }

  @Test
  void threeOfTenBuildsAreSound() {
    assertThat(START.sound()).isEqualTo(0.30);
  }

  @ParameterizedTest
  @CsvSource({"led, 0.70, 0.30", "diode, 0.24, 0.18", "npn, 0.27, 0.73"})
  void deadPartsAreOpenAsOftenAsThePublishedShares(String kind, double open, double closed) {
    ExerciseDraft draft = new ExerciseDraft().part("B1", "battery", "volts", 6);
    ExerciseDraft with =
        kind.equals("led") ? draft.part("X1", kind, "colour", "red") : draft.part("X1", kind);
    boolean transistor = kind.equals("npn");
    Exercise exercise =
        with.net("supply", transistor ? "B1.+ X1.c" : "B1.+ X1.a")
            .net("return", transistor ? "B1.- X1.e X1.b" : "B1.- X1.k")
            .exercise();
    Assembly assembly = Assembly.of(exercise, Schematic.netlist(exercise), Assembly.HoleNets.NONE);
    var scene =
        new Scene(
            exercise,
            Optional.empty(),
            assembly,
            assembly,
            new WiringReport(true, 1, List.of()),
            List.of());
    assertThat(DeadParts.of(scene))
        .extracting(fault -> fault.said().how() + " " + Math.round(1000 * fault.share()))
        .containsExactly(
            "open " + Math.round(1000 * open / (open + closed)),
            "short " + Math.round(1000 * closed / (open + closed)));
  }
}
