package org.holewise.engine.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.holewise.engine.exercise.ExerciseDraft.volts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.netlist.Schematic;
import org.holewise.engine.quantity.Unit;
import org.holewise.engine.reading.Assembly;
import org.holewise.engine.reading.Bench;
import org.holewise.engine.reading.Instrument;
import org.holewise.engine.reading.Meter;
import org.holewise.engine.reading.Meters;
import org.holewise.engine.reading.Shown;
import org.holewise.engine.wiring.WiringReport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What to measure next, in the example that de Kleer and Williams made the classic one (1987,
 * Diagnosing multiple faults, Artificial Intelligence 32; from memory, recomputed): three
 * multipliers X, Y, Z and two adders, of which one adder is off. Its diagnoses A1, M1, A2 with M2,
 * M2 with M3 have 0.495, 0.495, 0.005 and 0.005; what stands at X, Y and Z is 6 but for 4 at X
 * under M1, 4 at Y under both with M2, and 8 at Z under the last. The entropies of the outcomes are
 * 0.99993, 0.0808 and 0.0454 bit. Here X, Y and Z are batteries of so many volts.
 */
@Tag("fast")
class NextQuestionTest {
  private static final Meter HAND = Meters.named("hand-2000").orElseThrow();

  private final Exercise exercise =
      new ExerciseDraft()
          .part("X", "battery", "volts", 6, "spread", 0)
          .part("Y", "battery", "volts", 6, "spread", 0)
          .part("Z", "battery", "volts", 6, "spread", 0)
          .net("common", "X.- Y.- Z.-")
          .exercise();

  private final Assembly sound =
      Assembly.of(exercise, Schematic.netlist(exercise), Assembly.HoleNets.NONE);

  private FaultFinder.Group diagnosis(String name, double probability, Map<String, Double> volts) {
    Assembly really = sound;
    for (var at : volts.entrySet()) {
      really = really.changed(at.getKey(), "volts", at.getValue());
    }
    Place place = new Place.OfPart(name);
    var fault = Hypothesis.of(Priors.Family.DEAD_PART, place, "dead-part", 1, List.of(), really);
    var prediction =
        new Prediction(fault, new Forecasts(Bench.of(really), new Instrument(HAND)), List.of());
    return new FaultFinder.Group(
        place, List.of(new FaultFinder.Weighted(fault, prediction, probability, 1)), probability);
  }

  /** The reading to take when some were taken already, whatever they said. */
  private Optional<NextReading> after(Measure... taken) {
    var observations =
        Stream.of(taken)
            .map(
                measure ->
                    new Observation(
                        measure.toString(),
                        measure,
                        exercise.conditions().get(0),
                        new Shown.Amount(6, Unit.VOLT),
                        0))
            .toList();
    var scene =
        new Scene(
            exercise,
            Optional.empty(),
            sound,
            sound,
            new WiringReport(false, 0, List.of()),
            observations);
    var groups =
        List.of(
            diagnosis("A1", 0.495, Map.of()),
            diagnosis("M1", 0.495, Map.of("X", 4.0)),
            diagnosis("A2M2", 0.005, Map.of("Y", 4.0)),
            diagnosis("M2M3", 0.005, Map.of("Y", 4.0, "Z", 8.0)));
    return new NextQuestion(scene, HAND, Set.of(), groups).best();
  }

  private static Measure at(String battery) {
    return volts(battery + ".+", "X.-");
  }

  @Test
  @Published(Family.METER)
  void thePlaceWhoseOutcomeIsLeastCertainIsMeasuredFirst() {
    NextReading first = after().orElseThrow();
    assertThat(first.measure()).isEqualTo(at("X"));
    assertThat(first.gain()).isCloseTo(0.99993, within(5e-6));
  }

  @Test
  @Published(Family.METER)
  void whatTellsLessComesNext() {
    NextReading next = after(at("X")).orElseThrow();
    assertThat(next.measure()).isEqualTo(at("Y"));
    assertThat(next.gain()).isCloseTo(0.0808, within(5e-5));
  }

  /** 0.0454 bit is less than a twentieth. */
  @Test
  @Published(Family.METER)
  void whatTellsHardlyAnythingIsNotAskedFor() {
    assertThat(after(at("X"), at("Y"))).isEmpty();
  }
}
