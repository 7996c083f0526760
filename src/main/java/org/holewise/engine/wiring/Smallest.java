package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.List;

/**
 * A smallest set of repairs.
 *
 * <p><b>Method.</b> {@link Search} with the bound raised one by one: the first way found is of the
 * smallest cost. Where that takes more than {@link #NODES} nodes, the best way that branch and
 * bound finds within {@link #MORE} nodes; that need not be the smallest set.
 */
final class Smallest {
  static final int NODES = 30_000;
  static final int MORE = 10_000;

  private final Ground ground;
  private final Search search;
  private List<Fix> best = List.of();

  private Smallest(Wanted wanted, Layout layout, Ground ground) {
    this.ground = ground;
    search = new Search(wanted, layout);
  }

  static List<Fix> of(Wanted wanted, Layout layout, Ground ground) {
    return new Smallest(wanted, layout, ground).find();
  }

  private List<Fix> find() {
    var found = new ArrayList<Joints>();
    int left = NODES;
    for (int bound = 0; found.isEmpty() && left > 0; bound++) {
      left =
          search.run(
              bound,
              left,
              (way, joints) -> {
                found.add(joints);
                best = Draft.of(joints, ground);
                return false;
              });
    }
    if (found.isEmpty()) {
      search.run(
          Integer.MAX_VALUE / 2,
          MORE,
          (way, joints) -> {
            best = Draft.of(joints, ground);
            way.below(joints.cost);
            return true;
          });
    }
    return best;
  }
}
