package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.part.Part;
import org.holewise.engine.reading.Assembly;

/** Sources that are off, low, or connected the wrong way round. */
final class SupplyFaults {
  /** A low supply lies between 45 and 95 % of what it should be: middles of four equal parts. */
  private static final double[] LOW = {0.5125, 0.6375, 0.7625, 0.8875};

  /** Deviation inside one of the parts: a width of an eighth, uniform. */
  private static final double INSIDE = 0.125 / Math.sqrt(12);

  /** What a current limit is left at (A; common practice), and how likely beside a low supply. */
  private static final double[] LIMITS = {1e-3, 5e-3, 10e-3};

  private static final double LIMITED = 0.3;

  private SupplyFaults() {}

  static List<Hypothesis> off(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Part source : sources(scene)) {
      all.add(supply(scene, source, Family.SUPPLY_OFF, "supply-off", 0));
    }
    return all;
  }

  static List<Hypothesis> low(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Part source : sources(scene)) {
      for (double factor : LOW) {
        all.add(
            supply(scene, source, Family.SUPPLY_LOW, "supply-low", factor)
                .vague(source.ref() + ".volts", INSIDE / factor, 0));
      }
    }
    return all;
  }

  static List<Hypothesis> reversed(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Part source : sources(scene)) {
      all.add(supply(scene, source, Family.SUPPLY_REVERSED, "supply-reversed", -1));
    }
    return all;
  }

  /** A bench supply whose current limit is set too low for the circuit. */
  static List<Hypothesis> limit(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Part source : sources(scene)) {
      if (source.fields().has("limit")) {
        for (double amps : LIMITS) {
          all.add(
              Hypothesis.of(
                  Family.SUPPLY_LOW,
                  new Place.OfSupply(source.ref()),
                  "supply-limit",
                  LIMITED,
                  PartFaults.holes(scene, source),
                  scene.record().changed(source.ref(), "limit", amps)));
        }
      }
    }
    return all;
  }

  private static List<Part> sources(Scene scene) {
    return scene.exercise().parts().stream().filter(part -> part.kind().source()).toList();
  }

  private static Hypothesis supply(
      Scene scene, Part source, Family family, String kind, double factor) {
    Assembly really = scene.record();
    for (var field : source.kind().scaled(source, factor).entrySet()) {
      really = really.changed(source.ref(), field.getKey(), field.getValue());
    }
    return Hypothesis.of(
        family, new Place.OfSupply(source.ref()), kind, 1, PartFaults.holes(scene, source), really);
  }
}
