package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.netlist.AsBuilt;
import org.holewise.engine.part.Pin;
import org.holewise.engine.reading.Assembly;
import org.holewise.engine.solver.Circuit;
import org.holewise.engine.solver.Edit;
import org.holewise.engine.solver.Point;

/**
 * Contacts that do not conduct, or hardly: of leads and of links. A bridge over a rail's gap on the
 * record is a link with a prior of its own besides.
 */
final class ContactFaults {
  private static final List<String> KINDS = List.of("open-contact", "poor-contact");

  /** A contact above this is open (Ω). */
  private static final double OPEN = 1e9;

  /** Poor contacts lie between these, log-uniform, and in so many equal parts (Ω). */
  private static final double LEAST = 10;

  private static final double MOST = 10e3;
  private static final int PARTS = 8;

  /** A little more than a part's own deviation, so that there is no gap between two. */
  private static final double WIDE = 0.4;

  /**
   * One way for a contact to be bad.
   *
   * @param ohms its resistance (Ω)
   * @param share beside the other ways
   * @param deviation of the resistance (Ω)
   */
  private record Bad(double ohms, double share, double deviation) {
    String kind() {
      return KINDS.get(ohms >= OPEN ? 0 : 1);
    }
  }

  private static final List<Bad> BAD = bad();

  private ContactFaults() {}

  /** Open contacts leak like the exercise format's 1 GΩ or not at all. The worst comes first. */
  private static List<Bad> bad() {
    var bad = new ArrayList<Bad>();
    bad.add(new Bad(1e12, 0.15, 0));
    bad.add(new Bad(OPEN, 0.35, 0));
    double width = StrictMath.log(MOST / LEAST) / PARTS;
    for (int k = PARTS - 1; k >= 0; k--) {
      double ohms = LEAST * StrictMath.exp((k + 0.5) * width);
      bad.add(new Bad(ohms, 0.5 / PARTS, WIDE * width * ohms));
    }
    return List.copyOf(bad);
  }

  /** Whether one of two bad contacts is the other, only not as bad. */
  static boolean milder(Hypothesis one, Hypothesis other) {
    return one.place().equals(other.place())
        && one.family() == other.family()
        && KINDS.contains(one.kind())
        && KINDS.contains(other.kind());
  }

  static List<Hypothesis> ofLeads(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Pin pin : scene.exercise().pins()) {
      if (scene.layout().isPresent() && scene.layout().get().hole(pin).isEmpty()) {
        continue;
      }
      List<Hole> holes =
          scene.layout().flatMap(layout -> layout.hole(pin)).map(List::of).orElse(List.of());
      for (Bad bad : BAD) {
        all.add(
            Hypothesis.of(
                    Family.LEAD_CONTACT,
                    new Place.OfLead(pin),
                    bad.kind(),
                    bad.share(),
                    holes,
                    scene.record().edited(new Edit.Contact(pin, bad.ohms())))
                .vague(Circuit.CONTACT, 0, bad.deviation()));
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
      Assembly apart = Rewired.of(scene, layout, parted, 1 + i);
      int from = apart.places().netAt(link.from());
      int to = apart.places().netAt(link.to());
      boolean between = from >= 0 && to >= 0 && from != to;
      for (Bad bad : BAD) {
        boolean open = bad.ohms() >= OPEN;
        if (open || between && !bridgesOnly) {
          all.add(
              Hypothesis.of(
                      family,
                      new Place.OfLink(i),
                      bad.kind(),
                      bad.share(),
                      List.of(link.from(), link.to()),
                      between ? apart.edited(across(from, to, bad.ohms())) : apart)
                  .vague(Circuit.CONTACT, 0, bad.deviation()));
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
}
