package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.solver.Edit;
import org.holewise.engine.solver.Point;

/** Leads that touch the next strip: pushed under, or with too much bare wire. */
final class StripFaults {
  /** What two leads that touch are to each other (Ω). */
  private static final double TOUCH = 0.02;

  private StripFaults() {}

  static List<Hypothesis> touching(Scene scene) {
    return scene.layout().map(layout -> touching(scene, layout)).orElse(List.of());
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
                Hypothesis.of(
                    Family.TOUCHING,
                    new Place.OfStrips(hole, other),
                    "touching",
                    1,
                    List.of(hole, other),
                    scene
                        .record()
                        .edited(
                            new Edit.Across(new Point.AtNet(one), new Point.AtNet(two), TOUCH))));
          }
        });
    return all;
  }
}
