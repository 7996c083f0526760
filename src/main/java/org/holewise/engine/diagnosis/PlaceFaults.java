package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.netlist.AsBuilt;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Pin;
import org.holewise.engine.solver.Edit;

/**
 * Leads and link ends that are really in another hole than the record says: a column off, across
 * the groove, on the other rail of the pair, or in the strip of the part's other lead.
 */
final class PlaceFaults {
  private static final String ROWS = "abcdefghij";

  private PlaceFaults() {}

  static List<Hypothesis> ofLeads(Scene scene) {
    if (scene.layout().isEmpty()) {
      return sameNet(scene);
    }
    Layout layout = scene.layout().get();
    var all = new ArrayList<Hypothesis>();
    for (Pin pin : scene.exercise().pins()) {
      Optional<Hole> hole = layout.hole(pin);
      if (hole.isEmpty() || rigid(scene, pin.ref())) {
        continue;
      }
      int here = layout.nets().netAt(hole.get());
      Set<Hole> others = neighbours(hole.get());
      others.addAll(layout.otherLeads(pin));
      for (Hole written : others) {
        Optional<Hole> really = layout.freeNear(written);
        if (really.isPresent() && layout.nets().netAt(really.get()) != here) {
          all.add(
              wrongHole(
                  new Place.OfLead(pin),
                  really.get(),
                  scene.record().edited(new Edit.Moved(pin, layout.net(really.get())))));
        }
      }
    }
    return all;
  }

  static List<Hypothesis> ofLinkEnds(Scene scene) {
    return scene.layout().map(layout -> ofLinkEnds(scene, layout)).orElse(List.of());
  }

  private static List<Hypothesis> ofLinkEnds(Scene scene, Layout layout) {
    var all = new ArrayList<Hypothesis>();
    List<Link> links = layout.links();
    for (int i = 0; i < links.size(); i++) {
      for (int end = 0; end < 2; end++) {
        Hole hole = links.get(i).end(end);
        for (Hole written : neighbours(hole)) {
          Optional<Hole> really = layout.freeNear(written);
          if (really.isEmpty()) {
            continue;
          }
          AsBuilt other = layout.nets().with(i, end, really.get());
          if (!other.netlist().netOf().equals(scene.record().netlist().netOf())) {
            all.add(
                wrongHole(
                    new Place.OfLink(i), really.get(), Rewired.of(scene, layout, other, 1 + i)));
          }
        }
      }
    }
    return all;
  }

  /** Without a layout all that is known is that a lead may touch the part's other one. */
  private static List<Hypothesis> sameNet(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (var part : scene.exercise().parts()) {
      if (rigid(scene, part.ref())) {
        continue;
      }
      for (Pin pin : part.pins()) {
        for (Pin other : part.pins()) {
          int net = scene.record().netlist().net(other);
          if (net != scene.record().netlist().net(pin)) {
            all.add(
                Hypothesis.of(
                    Family.WRONG_HOLE,
                    new Place.OfLead(pin),
                    "wrong-hole",
                    1,
                    List.of(),
                    scene.record().edited(new Edit.Moved(pin, net))));
          }
        }
      }
    }
    return all;
  }

  /** Legs of a chip go where the chip goes: one of them may be bent under, but in no other hole. */
  private static boolean rigid(Scene scene, String ref) {
    return scene
        .exercise()
        .part(ref)
        .filter(part -> part.kind().footprint(part.fields()) instanceof Footprint.Dip)
        .isPresent();
  }

  private static Hypothesis wrongHole(
      Place place, Hole really, org.holewise.engine.reading.Assembly assembly) {
    return Hypothesis.of(Family.WRONG_HOLE, place, "wrong-hole", 1, List.of(really), assembly);
  }

  private static Set<Hole> neighbours(Hole hole) {
    var all = new LinkedHashSet<Hole>();
    if (hole.rail()) {
      String pair = (hole.track().charAt(0) == '+' ? "-" : "+") + hole.track().charAt(1);
      all.add(new Hole(hole.board(), pair, hole.column()));
      return all;
    }
    all.add(new Hole(hole.board(), hole.track(), hole.column() - 1));
    all.add(new Hole(hole.board(), hole.track(), hole.column() + 1));
    int row = ROWS.indexOf(hole.track());
    all.add(new Hole(hole.board(), ROWS.substring(9 - row, 10 - row), hole.column()));
    return all;
  }
}
