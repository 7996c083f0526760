package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.netlist.AsBuilt;
import org.holewise.engine.part.Pin;
import org.holewise.engine.reading.Assembly;
import org.holewise.engine.solver.Edit;
import org.holewise.engine.solver.Point;

/**
 * Contacts that do not conduct, or hardly: of leads and of links. A bridge over a rail's gap on the
 * record is a link with a prior of its own besides.
 */
final class ContactFaults {
  /** A contact above this is open (Ω). */
  private static final double OPEN = 1e9;

  /**
   * How bad a contact is (Ω) and how likely beside another: open ones leak like the exercise
   * format's 1 GΩ or not at all; poor ones lie between 10 Ω and 10 kΩ, log-uniform, in three equal
   * parts.
   */
  private static final double[][] BAD = {
    {OPEN, 0.35}, {1e12, 0.15}, {31.6, 1 / 6.0}, {316, 1 / 6.0}, {3162, 1 / 6.0}
  };

  private ContactFaults() {}

  static List<Hypothesis> ofLeads(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Pin pin : scene.exercise().pins()) {
      if (scene.layout().isPresent() && scene.layout().get().hole(pin).isEmpty()) {
        continue;
      }
      List<Hole> holes =
          scene.layout().flatMap(layout -> layout.hole(pin)).map(List::of).orElse(List.of());
      for (double[] bad : BAD) {
        all.add(
            Hypothesis.of(
                Family.LEAD_CONTACT,
                new Place.OfLead(pin),
                kind(bad[0]),
                bad[1],
                holes,
                scene.record().edited(new Edit.Contact(pin, bad[0]))));
      }
    }
    return all;
  }

  static List<Hypothesis> ofLinks(Scene scene) {
    return scene
        .layout()
        .map(layout -> ofLinks(scene, layout, Family.LINK_CONTACT, false))
        .orElse(List.of());
  }

  /** Links that bridge a rail's gap: forgetting the gap is a slip of its own. */
  static List<Hypothesis> ofBridges(Scene scene) {
    return scene
        .layout()
        .map(layout -> ofLinks(scene, layout, Family.RAIL_GAP, true))
        .orElse(List.of());
  }

  private static List<Hypothesis> ofLinks(
      Scene scene, Layout layout, Family family, boolean bridgesOnly) {
    var all = new ArrayList<Hypothesis>();
    List<Link> links = layout.links();
    for (int i = 0; i < links.size(); i++) {
      Link link = links.get(i);
      if (bridgesOnly && !bridges(link)) {
        continue;
      }
      AsBuilt parted = layout.nets().without(i);
      Assembly apart = scene.record().on(parted.netlist(), parted::netAt);
      int from = parted.netAt(link.from());
      int to = parted.netAt(link.to());
      boolean between = from >= 0 && to >= 0 && from != to;
      for (double[] bad : BAD) {
        boolean open = bad[0] >= OPEN;
        if (open || between && !bridgesOnly) {
          all.add(
              Hypothesis.of(
                  family,
                  new Place.OfLink(i),
                  kind(bad[0]),
                  bad[1],
                  List.of(link.from(), link.to()),
                  between ? apart.edited(across(from, to, bad[0])) : apart));
        }
      }
    }
    return all;
  }

  private static boolean bridges(Link link) {
    return link.from().rail()
        && link.from().board() == link.to().board()
        && link.from().track().equals(link.to().track());
  }

  private static Edit across(int from, int to, double ohms) {
    return new Edit.Across(new Point.AtNet(from), new Point.AtNet(to), ohms);
  }

  private static String kind(double ohms) {
    return ohms >= OPEN ? "open-contact" : "poor-contact";
  }
}
