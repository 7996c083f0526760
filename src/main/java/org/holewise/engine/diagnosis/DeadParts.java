package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.solver.Edit;
import org.holewise.engine.solver.Point;

/** Parts that are open or shorted inside. */
final class DeadParts {
  /** What a shorted part still is (Ω). */
  private static final double SHORT = 0.02;

  /**
   * Part of the failures that are open, by kind: lamp, diode and transistor from MIL-HDBK-338B
   * (from memory; short and open alone, drift left out), a film resistor's and a contact's judged.
   */
  private static final Map<String, Double> OPEN = open();

  private DeadParts() {}

  private static Map<String, Double> open() {
    Map<String, Double> open = new LinkedHashMap<>();
    open.put("resistor", 0.9);
    open.put("led", 0.70);
    open.put("diode", 24.0 / 42);
    open.put("zener", 24.0 / 42);
    open.put("npn", 0.27);
    open.put("pnp", 0.27);
    open.put("switch", 0.8);
    open.put("button", 0.8);
    return open;
  }

  static List<Hypothesis> of(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Part part : scene.exercise().parts()) {
      Double open = OPEN.get(part.kind().name());
      if (open == null) {
        continue;
      }
      Pin first = part.pins().get(0);
      Pin last = part.pins().get(part.kind().twins(part.fields()).isEmpty() ? lastOf(part) : 2);
      all.add(dead(scene, part, "open", open, new Edit.Without(part.ref())));
      all.add(
          dead(
              scene,
              part,
              "short",
              1 - open,
              new Edit.Across(new Point.AtPin(first), new Point.AtPin(last), SHORT)));
    }
    return all;
  }

  private static int lastOf(Part part) {
    return part.pins().size() - 1;
  }

  private static Hypothesis dead(Scene scene, Part part, String how, double share, Edit edit) {
    return Hypothesis.of(
            Family.DEAD_PART,
            new Place.OfPart(part.ref()),
            "dead-part",
            share,
            PartFaults.holes(scene, part),
            scene.record().edited(edit))
        .how(how);
  }
}
