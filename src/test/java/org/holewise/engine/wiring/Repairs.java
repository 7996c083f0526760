package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;

/** Does what a report says, with the first holes that are still free. */
final class Repairs {
  private final List<Placed> placed;
  private final List<Link> links;
  private final Set<Hole> used = new LinkedHashSet<>();
  private final List<Integer> removed = new ArrayList<>();

  private Repairs(Build build) {
    placed = new ArrayList<>(build.placed());
    links = new ArrayList<>(build.links());
    placed.forEach(part -> used.addAll(part.holes().values()));
    links.forEach(link -> used.addAll(List.of(link.from(), link.to())));
  }

  /** The build after all repairs; empty where a part is to be placed or no free hole is named. */
  static Optional<Build> done(Build build, List<Repair> repairs) {
    var bench = new Repairs(build);
    if (!repairs.stream().allMatch(bench::done)) {
      return Optional.empty();
    }
    bench.removed.stream()
        .sorted(java.util.Comparator.reverseOrder())
        .forEach(link -> bench.links.remove((int) link));
    return Optional.of(new Build(build.board(), bench.placed, bench.links));
  }

  private boolean done(Repair repair) {
    if (repair instanceof Repair.MoveLead lead) {
      return free(lead.to()).map(to -> move(lead, to)).isPresent();
    }
    if (repair instanceof Repair.MoveLinkEnd end) {
      return free(end.to())
          .map(to -> links.set(end.link(), links.get(end.link()).with(end.end(), to)))
          .isPresent();
    }
    if (repair instanceof Repair.AddLink add) {
      var from = free(add.from());
      var to = free(add.to());
      return from.isPresent() && to.isPresent() && links.add(new Link(from.get(), to.get()));
    }
    return repair instanceof Repair.RemoveLink gone && removed.add(gone.link());
  }

  private Placed move(Repair.MoveLead lead, Hole to) {
    for (int i = 0; ; i++) {
      Placed part = placed.get(i);
      if (part.ref().equals(lead.pin().ref())) {
        var holes = new LinkedHashMap<>(part.holes());
        holes.put(lead.pin().name(), to);
        return placed.set(i, new Placed(part.ref(), holes, part.pin1(), part.marked()));
      }
    }
  }

  private Optional<Hole> free(List<Hole> holes) {
    var first = holes.stream().filter(hole -> !used.contains(hole)).findFirst();
    first.ifPresent(used::add);
    return first;
  }
}
