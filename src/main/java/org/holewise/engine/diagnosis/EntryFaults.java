package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.wiring.Difference;
import org.holewise.engine.wiring.Repair;
import org.holewise.engine.wiring.Repair.Slip;

/**
 * A layout that was entered wrongly and built right: what differs is really where it should be.
 * Slips to a hole near by are among the other faults of place already; these are the far ones.
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
    var repairs = new ArrayList<Repair>();
    repairs.add(differences.get(0).repair());
    repairs.addAll(differences.get(0).or());
    for (Repair repair : repairs) {
      place(repair)
          .ifPresent(
              place ->
                  all.add(
                      Hypothesis.of(
                          Family.WRONG_HOLE,
                          place,
                          "wrong-hole",
                          SHARE,
                          nearest(repair),
                          scene.wanted())));
    }
    return all;
  }

  private static Optional<Place> place(Repair repair) {
    if (repair instanceof Repair.MoveLead lead && lead.slip() == Slip.ELSEWHERE) {
      return Optional.of(new Place.OfLead(lead.pin()));
    }
    return repair instanceof Repair.MoveLinkEnd end && end.slip() == Slip.ELSEWHERE
        ? Optional.of(new Place.OfLink(end.link()))
        : Optional.empty();
  }

  private static List<Hole> nearest(Repair repair) {
    List<Hole> to =
        repair instanceof Repair.MoveLead lead
            ? lead.to()
            : repair instanceof Repair.MoveLinkEnd end ? end.to() : List.of();
    return to.stream().limit(1).toList();
  }
}
