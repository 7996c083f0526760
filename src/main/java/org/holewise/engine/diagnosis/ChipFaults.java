package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Limit;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.reading.Assembly;
import org.holewise.engine.reading.Clocking;
import org.holewise.engine.solver.Edit;

/**
 * Chips that are really otherwise than the record says: turned round in their holes, a column off,
 * without their supply; and a contact that bounces, so that one push clocks more than once.
 */
final class ChipFaults {
  private static final double OPEN = 1e9;

  /** Pulses more than there were pushes, and how likely each is beside the others. */
  private static final double[][] BOUNCES = {{1, 3}, {2, 2}, {3, 1}};

  private ChipFaults() {}

  static List<Hypothesis> of(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Part part : scene.exercise().parts()) {
      if (part.kind().footprint(part.fields()) instanceof Footprint.Dip) {
        all.add(fault(scene, part, "turned-round", scene.record().mistaken(turned(part))));
        unpowered(scene, part).ifPresent(all::add);
        for (int columns : new int[] {-1, 1}) {
          shifted(scene, part, columns).ifPresent(all::add);
        }
      }
    }
    return all;
  }

  private static Hypothesis fault(Scene scene, Part part, String kind, Assembly really) {
    return Hypothesis.of(
        Family.PINS,
        new Place.OfPart(part.ref()),
        kind,
        1,
        PartFaults.holes(scene, part).stream().limit(1).toList(),
        really);
  }

  /** Each lead is really the one half the package on. */
  private static Map<Pin, Pin> turned(Part part) {
    List<Pin> pins = part.pins();
    Map<Pin, Pin> turned = new LinkedHashMap<>();
    for (int k = 0; k < pins.size(); k++) {
      turned.put(pins.get(k), pins.get((k + pins.size() / 2) % pins.size()));
    }
    return turned;
  }

  private static Optional<Hypothesis> unpowered(Scene scene, Part part) {
    for (Limit limit : part.kind().limits(part)) {
      if (limit instanceof Limit.Supply supply) {
        var contact = new Edit.Contact(part.pin(supply.plus()), OPEN);
        return Optional.of(fault(scene, part, "unpowered", scene.record().edited(contact)));
      }
    }
    return Optional.empty();
  }

  private static Optional<Hypothesis> shifted(Scene scene, Part part, int columns) {
    if (scene.layout().isEmpty()) {
      return Optional.empty();
    }
    Layout layout = scene.layout().get();
    var moves = new ArrayList<Edit>();
    for (Pin pin : part.pins()) {
      Optional<Hole> hole = layout.hole(pin);
      if (hole.isEmpty()) {
        return Optional.empty();
      }
      Hole beside = new Hole(hole.get().board(), hole.get().track(), hole.get().column() + columns);
      moves.add(new Edit.Moved(pin, layout.net(beside)));
    }
    return Optional.of(
        fault(scene, part, "shifted", scene.record().edited(moves.toArray(Edit[]::new))));
  }

  static List<Hypothesis> bouncing(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    boolean counted =
        scene.observations().stream().anyMatch(observation -> observation.condition().after() > 0);
    for (Part part : scene.exercise().parts()) {
      if (counted && Clocking.bounces(scene.exercise(), part)) {
        for (double[] bounce : BOUNCES) {
          all.add(
              Hypothesis.of(
                  Family.LEAD_CONTACT,
                  new Place.OfPart(part.ref()),
                  "bounce",
                  bounce[1],
                  PartFaults.holes(scene, part).stream().limit(1).toList(),
                  scene.record().changed(part.ref(), Clocking.BOUNCES, bounce[0])));
        }
      }
    }
    return all;
  }
}
