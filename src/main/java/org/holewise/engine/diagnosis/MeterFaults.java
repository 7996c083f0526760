package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.reading.Shown;

/** Readings that are wrong though the build is sound. */
final class MeterFaults {
  /** Leads exchanged, beside any other slip of the same reading. */
  private static final double EXCHANGED = 0.5;

  private MeterFaults() {}

  static List<Hypothesis> ofReadings(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Observation observation : scene.observations()) {
      if (!(observation.shown() instanceof Shown.Amount)) {
        continue;
      }
      var place = new Place.OfReading(observation.id());
      if (observation.measure() instanceof Measure.Volts
          || observation.measure() instanceof Measure.Amps) {
        all.add(
            Hypothesis.of(Family.METER, place, "meter-leads", EXCHANGED, List.of(), scene.record())
                .slipped(observation.id(), true));
      }
      all.add(
          Hypothesis.of(
                  Family.METER, place, "meter-place", 1 - EXCHANGED, List.of(), scene.record())
              .slipped(observation.id(), false));
    }
    return all;
  }
}
