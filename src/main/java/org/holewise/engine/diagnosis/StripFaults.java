package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.solver.Edit;
import org.holewise.engine.solver.Point;

/** Leads that touch the next strip: pushed under, or with too much bare wire. */
final class StripFaults {
  /** What two leads that touch are to each other (Ω). */
  private static final double TOUCH = 0.02;

  /** Of a large build's nets the first: each with each is many, and none of them likely. */
  private static final int MOST_NETS = 12;

  private StripFaults() {}

  static List<Hypothesis> touching(Scene scene) {
    return scene.layout().map(layout -> touching(scene, layout)).orElse(List.of());
  }

  /** A wire from one net to another that is not on the record. */
  static List<Hypothesis> leftover(Scene scene) {
    return scene.layout().map(layout -> leftover(scene, layout)).orElse(List.of());
  }

  private static List<Hypothesis> leftover(Scene scene, Layout layout) {
    Map<Integer, Hole> byNet = new TreeMap<>();
    for (Hole hole : layout.taken()) {
      if (layout.nets().netAt(hole) >= 0) {
        byNet.putIfAbsent(layout.nets().netAt(hole), hole);
      }
    }
    var all = new ArrayList<Hypothesis>();
    byNet.forEach(
        (one, hole) ->
            byNet.forEach(
                (two, other) -> {
                  if (one < two && two < MOST_NETS) {
                    var place = new Place.OfStrips(hole, other);
                    List<Hole> holes = List.of(hole, other);
                    all.add(joined(scene, Family.LEFTOVER, place, "leftover", holes, one, two));
                  }
                }));
    return all;
  }

  private static Hypothesis joined(
      Scene scene, Family family, Place place, String kind, List<Hole> holes, int one, int two) {
    var across = new Edit.Across(new Point.AtNet(one), new Point.AtNet(two), TOUCH);
    return Hypothesis.of(family, place, kind, 1, holes, scene.record().edited(across));
  }

  private static List<Hypothesis> touching(Scene scene, Layout layout) {
    Map<Integer, Hole> byStrip = new LinkedHashMap<>();
    for (Hole hole : layout.taken()) {
      if (!hole.rail()) {
        layout.build().board().strip(hole).ifPresent(strip -> byStrip.putIfAbsent(strip, hole));
      }
    }
    var all = new ArrayList<Hypothesis>();
    byStrip.forEach(
        (strip, hole) -> {
          Hole next = new Hole(hole.board(), hole.track(), hole.column() + 1);
          var neighbour = layout.build().board().strip(next);
          Hole other = neighbour.isPresent() ? byStrip.get(neighbour.getAsInt()) : null;
          if (other == null) {
            return;
          }
          int one = layout.nets().netAt(hole);
          int two = layout.nets().netAt(other);
          if (one >= 0 && two >= 0 && one != two) {
            all.add(
                joined(
                    scene,
                    Family.TOUCHING,
                    new Place.OfStrips(hole, other),
                    "touching",
                    List.of(hole, other),
                    one,
                    two));
          }
        });
    return all;
  }
}
