package org.holewise.engine.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.holewise.engine.exercise.ExerciseDraft.volts;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.netlist.Schematic;
import org.holewise.engine.quantity.Unit;
import org.holewise.engine.reading.Assembly;
import org.holewise.engine.reading.Meters;
import org.holewise.engine.reading.Shown;
import org.holewise.engine.wiring.WiringReport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Textbook faults told by their readings alone: Grob and Schultz, Basic Electronics,
 * troubleshooting of series and series-parallel circuits. Every other hypothesis is there to
 * distract.
 */
@Tag("fast")
class PublishedFaultsTest {

  private static Diagnosis find(Exercise exercise, double... volts) {
    Assembly assembly = Assembly.of(exercise, Schematic.netlist(exercise), Assembly.HoleNets.NONE);
    List<Observation> observations =
        IntStream.range(0, volts.length)
            .mapToObj(
                i ->
                    new Observation(
                        exercise.readings().get(i).id(),
                        exercise.readings().get(i).measure(),
                        exercise.conditions().get(0),
                        new Shown.Amount(volts[i], Unit.VOLT),
                        0))
            .toList();
    var scene =
        new Scene(
            exercise,
            Optional.empty(),
            assembly,
            assembly,
            new WiringReport(false, 0, List.of()),
            observations);
    return FaultFinder.find(
        scene, Meters.named("hand-2000").orElseThrow(), Priors.start(), Set.of());
  }

  /** Grob, examples 4-6 and 4-7: 24 V; 150, 120, 180, 150 Ω in series; sound 6.0 4.8 7.2 6.0 V. */
  private static Exercise series() {
    return new ExerciseDraft()
        .part("B1", "battery", "volts", 24)
        .part("R1", "resistor", "ohms", 150)
        .part("R2", "resistor", "ohms", 120)
        .part("R3", "resistor", "ohms", 180)
        .part("R4", "resistor", "ohms", 150)
        .net("n1", "B1.+ R1.1")
        .net("n2", "R1.2 R2.1")
        .net("n3", "R2.2 R3.1")
        .net("n4", "R3.2 R4.1")
        .net("n5", "R4.2 B1.-")
        .reading("v1", volts("R1.1", "R1.2"))
        .reading("v2", volts("R2.1", "R2.2"))
        .reading("v3", volts("R3.1", "R3.2"))
        .reading("v4", volts("R4.1", "R4.2"))
        .exercise();
  }

  private static void firstIs(Diagnosis diagnosis, String ref, String kind, String how) {
    Suspect first = diagnosis.suspects().get(0);
    assertThat(first.place()).as("%s", diagnosis.suspects()).isEqualTo(new Place.OfPart(ref));
    assertThat(first.likeliest().kind()).isEqualTo(kind);
    assertThat(first.likeliest().how()).isEqualTo(how);
  }

  @Test
  @Published(Family.METER)
  void soundReadingsAccuseNothing() {
    Suspect first = find(series(), 6.0, 4.8, 7.2, 6.0).suspects().get(0);
    assertThat(first.place()).isEqualTo(new Place.Nowhere());
    assertThat(first.probability()).isGreaterThan(0.5);
  }

  @Test
  @Published(Family.METER)
  void allTheVoltsAcrossOneResistorSayThatItIsOpen() {
    firstIs(find(series(), 0, 0, 24, 0), "R3", "dead-part", "open");
  }

  @Test
  @Published(Family.METER)
  void noVoltsAcrossOneAndMoreAcrossTheOthersSayThatItIsShorted() {
    Diagnosis diagnosis = find(series(), 8, 6.4, 9.6, 0);
    Suspect first = diagnosis.suspects().get(0);
    boolean ofR4 =
        first.place().equals(new Place.OfPart("R4"))
            || first.place() instanceof Place.OfLead lead && lead.pin().ref().equals("R4");
    assertThat(ofR4).as("%s", diagnosis.suspects()).isTrue();
    assertThat(diagnosis.suspects())
        .filteredOn(s -> s.place().equals(new Place.OfPart("R4")))
        .first()
        .satisfies(s -> assertThat(s.likeliest().how()).isEqualTo("short"));
  }

  @Test
  @Published(Family.METER)
  void aPairThatMeasuresLikeOneOfItsTwoHasLostTheOther() {
    // Grob 6-3: R1 120, a pair of 100 and 150 in parallel, R4 180 on 36 V (the pair from memory);
    // reads 10.8, 9, 16.2 V: the pair measures 100 Ω
    Exercise pair =
        new ExerciseDraft()
            .part("B1", "battery", "volts", 36)
            .part("R1", "resistor", "ohms", 120)
            .part("R2", "resistor", "ohms", 100)
            .part("R3", "resistor", "ohms", 150)
            .part("R4", "resistor", "ohms", 180)
            .net("n1", "B1.+ R1.1")
            .net("a", "R1.2 R2.1 R3.1")
            .net("b", "R2.2 R3.2 R4.1")
            .net("n5", "R4.2 B1.-")
            .reading("v1", volts("R1.1", "R1.2"))
            .reading("pair", volts("R2.1", "R2.2"))
            .reading("v4", volts("R4.1", "R4.2"))
            .exercise();
    Diagnosis diagnosis = find(pair, 10.8, 9, 16.2);
    Place first = diagnosis.suspects().get(0).place();
    assertThat(
            first.equals(new Place.OfPart("R3"))
                || first instanceof Place.OfLead lead && lead.pin().ref().equals("R3"))
        .as("%s", diagnosis.suspects())
        .isTrue();
    assertThat(diagnosis.suspects().get(0).alike()).isNotEmpty();
  }
}
