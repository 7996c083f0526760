package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.part.Part;
import org.holewise.engine.reading.Assembly;

/** Sources that are off, low, or connected the wrong way round. */
final class SupplyFaults {
  /**
   * A low supply lies anywhere between the first and the last of these shares of what it should be,
   * and is taken by pieces. The last ones are narrow: a wide one's tail takes a sound supply that
   * is a little down for a low one.
   */
  private static final double[] LOW = {
    0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.89, 0.92, 0.935, 0.945, 0.95
  };

  /** Deviation inside a piece, by its width: so the pieces together are level, without gaps. */
  private static final double INSIDE = 0.5;

  /** How likely a whole low supply is beside one of the limits below. */
  private static final double WHOLE = 4;

  /** What a current limit is left at (A; common practice), and how likely beside a low supply. */
  private static final double[] LIMITS = {1e-3, 5e-3, 10e-3};

  private static final double LIMITED = 0.3;

  private SupplyFaults() {}

  static List<Hypothesis> off(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Part source : sources(scene)) {
      all.add(supply(scene, source, Family.SUPPLY_OFF, "supply-off", 1, 0));
    }
    return all;
  }

  static List<Hypothesis> low(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Part source : sources(scene)) {
      for (int piece = 0; piece + 1 < LOW.length; piece++) {
        double factor = (LOW[piece] + LOW[piece + 1]) / 2;
        double width = LOW[piece + 1] - LOW[piece];
        double share = WHOLE * width / (LOW[LOW.length - 1] - LOW[0]);
        all.add(
            supply(scene, source, Family.SUPPLY_LOW, "supply-low", share, factor)
                .vague(source.ref() + ".volts", INSIDE * width / factor, 0));
      }
    }
    return all;
  }

  static List<Hypothesis> reversed(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Part source : sources(scene)) {
      all.add(supply(scene, source, Family.SUPPLY_REVERSED, "supply-reversed", 1, -1));
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
      Scene scene, Part source, Family family, String kind, double share, double factor) {
    Assembly really = scene.record();
    for (var field : source.kind().scaled(source, factor).entrySet()) {
      really = really.changed(source.ref(), field.getKey(), field.getValue());
    }
    return Hypothesis.of(
        family,
        new Place.OfSupply(source.ref()),
        kind,
        share,
        PartFaults.holes(scene, source),
        really);
  }
}
