package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.engine.exercise.Exercise;

/** The schematic as the search sees it: numbers, options and symmetries. Immutable. */
final class Wanted {
  final Terminals terminals;
  final Option[][] options;

  /** Whether links that change no net are let be. */
  final boolean extraLinks;

  /** How many parts may use each slot. */
  final int[] slots;

  private final List<List<Optional<Swap>>> swaps = new ArrayList<>();

  Wanted(Exercise exercise) {
    terminals = new Terminals(exercise);
    extraLinks = exercise.allow().extraLinks();
    List<Chain> chains = exercise.allow().seriesOrder() ? Chain.of(terminals) : List.of();
    int[] classOf = Options.classes(terminals, exercise.allow());
    var all = Options.of(terminals, classOf, chains);
    options = all.table();
    slots = all.slots();
    for (int i = 0; i < classOf.length; i++) {
      var row = new ArrayList<Optional<Swap>>();
      for (int j = 0; j < i; j++) {
        row.add(
            classOf[i] == classOf[j]
                ? Swap.of(terminals, classOf, chains, i, j)
                : Optional.empty());
      }
      swaps.add(row);
    }
  }

  /** The symmetry that exchanges two places. */
  Optional<Swap> swap(int one, int other) {
    return one == other
        ? Optional.empty()
        : swaps.get(Math.max(one, other)).get(Math.min(one, other));
  }
}
