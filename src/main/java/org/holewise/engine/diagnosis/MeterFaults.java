package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.reading.Shown;

/**
 * Readings that are wrong though the build is sound. How likely each slip is beside the others of
 * its reading is judgement; that anything may be wrong with a reading keeps it from excluding what
 * is true.
 */
final class MeterFaults {
  private static final double LEADS = 0.35;
  private static final double ANYTHING = 0.4;
  private static final double NOTHING = 0.15;

  /** Each factor by which a reading is misread: a decimal, or V for mV. */
  private static final double SCALE = 0.025;

  private static final double[] FACTORS = {10, 0.1, 1000, 1e-3};

  private MeterFaults() {}

  static List<Hypothesis> ofReadings(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Observation observation : scene.observations()) {
      if (!(observation.shown() instanceof Shown.Amount)) {
        continue;
      }
      String id = observation.id();
      boolean volts = observation.measure() instanceof Measure.Volts;
      boolean amps = observation.measure() instanceof Measure.Amps;
      if (volts || amps) {
        all.add(slip(scene, id, "meter-leads", LEADS, new Slip.Leads(id)));
        String dead = amps ? "meter-fuse" : "meter-mode";
        all.add(slip(scene, id, dead, NOTHING, new Slip.Scaled(id, 0)));
        for (double factor : FACTORS) {
          all.add(slip(scene, id, "meter-scale", SCALE, new Slip.Scaled(id, factor)));
        }
      }
      all.add(slip(scene, id, "meter-place", ANYTHING, new Slip.Anything(id)));
    }
    return all;
  }

  private static Hypothesis slip(Scene scene, String id, String kind, double share, Slip slip) {
    return Hypothesis.of(
            Family.METER, new Place.OfReading(id), kind, share, List.of(), scene.record())
        .slipped(slip);
  }

  /** Two readings of one kind, each written down for the other. */
  static List<Hypothesis> exchanged(Scene scene) {
    List<Observation> taken =
        scene.observations().stream().filter(o -> o.shown() instanceof Shown.Amount).toList();
    var all = new ArrayList<Hypothesis>();
    for (int i = 0; i < taken.size(); i++) {
      for (int j = i + 1; j < taken.size(); j++) {
        Observation one = taken.get(i);
        Observation other = taken.get(j);
        if (one.measure().key().equals(other.measure().key())) {
          all.add(
              Hypothesis.of(
                      Family.READINGS,
                      new Place.OfReadings(one.id(), other.id()),
                      "readings-exchanged",
                      1,
                      List.of(),
                      scene.record())
                  .slipped(new Slip.Exchanged(one.id(), other.id())));
        }
      }
    }
    return all;
  }
}
