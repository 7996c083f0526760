package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.wiring.Difference;
import org.holewise.engine.wiring.Repair;
import org.holewise.engine.wiring.Repair.Slip;

/**
 * A layout that was entered wrongly and built right: what differs from the schematic is really as
 * it should be. Slips to a hole near by are among the faults of place already; these are the
 * others.
 */
final class EntryFaults {
  /** With more differences than this the record is another circuit, not a slip of the pen. */
  private static final int MOST = 3;

  /** How likely a slip of the pen to anywhere is, beside one to a certain hole near by. */
  private static final double SHARE = 0.3;

  private EntryFaults() {}

  static List<Hypothesis> ofEntry(Scene scene) {
    List<Difference> differences = scene.wiring().differences();
    var all = new ArrayList<Hypothesis>();
    if (scene.layout().isEmpty() || differences.isEmpty() || differences.size() > MOST) {
      return all;
    }
    boolean among = differences.size() > 1;
    for (Difference difference : differences) {
      all.addAll(leftOut(scene, difference.repair()));
      all.addAll(moved(scene, difference.repair(), among));
      difference.or().forEach(repair -> all.addAll(moved(scene, repair, among)));
    }
    return all;
  }

  private static List<Hypothesis> moved(Scene scene, Repair repair, boolean among) {
    if (repair instanceof Repair.MoveLead lead && (among || lead.slip() == Slip.ELSEWHERE)) {
      return List.of(wrongHole(scene, new Place.OfLead(lead.pin()), lead.to()));
    }
    if (repair instanceof Repair.MoveLinkEnd end && (among || end.slip() == Slip.ELSEWHERE)) {
      return List.of(wrongHole(scene, new Place.OfLink(end.link()), end.to()));
    }
    return List.of();
  }

  private static Hypothesis wrongHole(Scene scene, Place place, List<Hole> to) {
    return Hypothesis.of(
        Family.WRONG_HOLE,
        place,
        "wrong-hole",
        SHARE,
        to.stream().limit(1).toList(),
        scene.wanted());
  }

  /** A link or a part that is on the board and not on the record. */
  private static List<Hypothesis> leftOut(Scene scene, Repair repair) {
    if (repair instanceof Repair.AddLink add && !add.from().isEmpty() && !add.to().isEmpty()) {
      var ends = List.of(add.from().get(0), add.to().get(0));
      return List.of(leftOut(scene, new Place.OfStrips(ends.get(0), ends.get(1)), ends));
    }
    return repair instanceof Repair.PlacePart part
        ? List.of(leftOut(scene, new Place.OfPart(part.ref()), List.of()))
        : List.of();
  }

  private static Hypothesis leftOut(Scene scene, Place place, List<Hole> holes) {
    return Hypothesis.of(Family.LEFTOVER, place, "leftover", SHARE, holes, scene.wanted());
  }
}
