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
