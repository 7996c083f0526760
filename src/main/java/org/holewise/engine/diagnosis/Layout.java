package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.netlist.AsBuilt;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/** A build with its nets, and which of its holes are taken. Immutable. */
public record Layout(Build build, AsBuilt nets, Set<Hole> taken) {

  /** More strips than nine boards have. */
  private static final int ROOM = 4096;

  public static Layout of(Build build, List<Part> parts) {
    var taken = new TreeSet<Hole>();
    build.placed().forEach(placed -> taken.addAll(placed.holes().values()));
    build.links().forEach(link -> taken.addAll(List.of(link.from(), link.to())));
    return new Layout(build, AsBuilt.of(build, parts), taken);
  }

  /** Where a lead is on the record; empty where it has no hole on the board. */
  Optional<Hole> hole(Pin pin) {
    return build
        .placed(pin.ref())
        .flatMap(placed -> placed.hole(pin.name()))
        .filter(hole -> build.board().strip(hole).isPresent());
  }

  /** The net at a hole; of a strip that no lead touches a number of its own. */
  int net(Hole hole) {
    int net = nets.netAt(hole);
    return net < 0 ? unnumbered(nets, 0) + build.board().stripOrNone(hole) : net;
  }

  /** Numbers of fresh strips that no two faults share, beyond those of the record and of holes. */
  static int unnumbered(AsBuilt nets, int key) {
    return nets.nets() + 1 + key * ROOM;
  }

  List<Link> links() {
    return build.links();
  }

  /** Holes of a part's other leads. */
  List<Hole> otherLeads(Pin pin) {
    return build
        .placed(pin.ref())
        .map(Placed::holes)
        .map(
            holes ->
                holes.entrySet().stream()
                    .filter(lead -> !lead.getKey().equals(pin.name()))
                    .map(lead -> lead.getValue())
                    .toList())
        .orElse(List.of());
  }

  /** That hole if it is free, else another free one of its strip; empty where there is none. */
  Optional<Hole> freeNear(Hole wanted) {
    var strip = build.board().strip(wanted);
    if (strip.isEmpty()) {
      return Optional.empty();
    }
    var holes = new ArrayList<Hole>();
    if (build.board().has(wanted)) {
      holes.add(wanted);
    }
    holes.addAll(build.board().holes(strip.getAsInt()));
    return holes.stream().filter(hole -> !taken.contains(hole)).findFirst();
  }
}
