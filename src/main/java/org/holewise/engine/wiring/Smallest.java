package org.holewise.engine.wiring;

import java.util.List;
import java.util.Optional;

/**
 * A smallest set of repairs.
 *
 * <p><b>Method.</b> {@link Search} with the bound raised one by one: the first ways found are of
 * the smallest cost; of some hundreds of these the most plausible is taken ({@link Plausibility}).
 * Where that takes more than {@link #NODES} nodes, the best way that branch and bound finds within
 * {@link #MORE} nodes; that need not be the smallest set.
 *
 * <p>Where links that change no net must go, see {@link Tidied}.
 */
final class Smallest {
  static final int NODES = 15_000;
  static final int MORE = 5_000;

  /** How many sets of the smallest size are compared, and found with how many nodes. */
  private static final int MOST_OF_A_SIZE = 300;

  private static final int MORE_OF_A_SIZE = 3_000;
  private static final int NO_BOUND = 1_000_000;

  private final Wanted wanted;
  private final Layout layout;
  private final Plausibility plausibility;
  private List<Fix> best = List.of();
  private int rank = Integer.MAX_VALUE;
  private int looked;
  private boolean found;

  private Smallest(Wanted wanted, Layout layout, Plausibility plausibility) {
    this.wanted = wanted;
    this.layout = layout;
    this.plausibility = plausibility;
  }

  /** Empty where nothing that may be moved makes the layout right. */
  static Optional<List<Fix>> of(Wanted wanted, Layout layout, Plausibility plausibility) {
    var smallest = new Smallest(wanted, layout, plausibility);
    smallest.search();
    if (!smallest.found) {
      return Optional.empty();
    }
    return Optional.of(
        wanted.extraLinks ? smallest.best : Tidied.of(wanted, layout, smallest.best));
  }

  private void search() {
    var search = new Search(wanted, layout);
    int left = NODES;
    for (int bound = 0; looked == 0 && left > 0; bound++) {
      left = search.run(bound, left, this::look);
    }
    if (looked == 0) {
      search.run(NO_BOUND, MORE, this::better);
    }
  }

  /** Takes the most plausible of some sets of the same size. */
  private boolean look(Search way, Joints joints) {
    found = true;
    var fixes = Draft.of(joints, plausibility.ground());
    int own = plausibility.of(fixes, joints);
    if (own < rank) {
      rank = own;
      best = fixes;
    }
    if (looked++ == 0) {
      way.spendAtMost(MORE_OF_A_SIZE);
    }
    return joints.cost > 1 && rank > 0 && looked < MOST_OF_A_SIZE;
  }

  private boolean better(Search way, Joints joints) {
    found = true;
    best = Draft.of(joints, plausibility.ground());
    way.below(joints.cost);
    return true;
  }
}
