package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.board.Build;
import org.holewise.engine.exercise.Exercise;

/**
 * Compares a build's nets with the schematic's, as in layout-versus-schematic checking, and
 * explains what differs as the smallest set of repairs.
 *
 * <p>Not differences: pins exchanged as their kind allows, equal parts and the order in series
 * traded where the exercise allows, where a twin sits on its own net or alone, links that change no
 * net unless the exercise forbids them, pins in no strip that are on no net with others.
 *
 * <p>Holes that are full do not count when the set is sought; a repair for which no free hole
 * remains is offered only where there is no other, with an empty list. Unknown parts and pins and
 * second placings are left out of account. A pure function; the work is bounded by counting steps.
 */
public final class WiringComparison {
  private static final int PASSES = 2;

  private final Wanted wanted;
  private final Layout layout;
  private final Offers offers;
  private final List<Fix> fixes;

  private WiringComparison(Exercise exercise, Build build) {
    wanted = new Wanted(exercise);
    layout = Layout.of(wanted.terminals, build);
    var ground = new Ground(wanted.terminals, build);
    offers = new Offers(wanted.terminals, layout, build, ground);
    fixes = new ArrayList<>(Smallest.of(wanted, layout, ground));
  }

  public static WiringReport compare(Exercise exercise, Build build) {
    return new WiringComparison(exercise, build).report();
  }

  private WiringReport report() {
    for (int pass = 0; pass < PASSES && improve(); pass++) {
      continue;
    }
    var differences = new ArrayList<Offered>();
    for (int i = 0; i < fixes.size(); i++) {
      differences.add(offered(i));
    }
    double leads = Math.max(1, wanted.terminals.pins.size());
    return new WiringReport(
        fixes.isEmpty(),
        Math.max(0, 1 - fixes.size() / leads),
        differences.stream()
            .sorted(java.util.Comparator.comparing(Offered::now))
            .map(Offered::difference)
            .toList());
  }

  /** Puts the most plausible repair in each one's place; whether that changed anything. */
  private boolean improve() {
    boolean changed = false;
    for (int i = 0; i < fixes.size(); i++) {
      var singles = singles(i);
      if (singles.right()) {
        fixes.remove(i--);
        changed = true;
      } else if (!singles.choices().isEmpty()) {
        Fix better = offers.of(singles.choices(), fixes.get(i)).get(0).fix();
        changed |= !better.equals(fixes.get(i));
        fixes.set(i, better);
      }
    }
    return changed;
  }

  /** What would do in one's place, all the others done. */
  private Singles singles(int i) {
    Layout others = layout;
    for (int j = 0; j < fixes.size(); j++) {
      others = j == i ? others : others.after(fixes.get(j));
    }
    return Singles.of(wanted, others);
  }

  private Offered offered(int i) {
    Fix now = fixes.get(i);
    var all = offers.of(singles(i).choices(), now);
    if (all.stream().noneMatch(offer -> offer.fix().equals(now))) {
      System.out.println("lost " + now + " of " + fixes + " in " + all);
    }
    var own = all.stream().filter(offer -> offer.fix().equals(now)).findFirst().orElseThrow();
    return new Offered(own, all.stream().filter(offer -> offer != own).toList());
  }

  private record Offered(Offer now, List<Offer> others) {
    Difference difference() {
      return new Difference(now.repair(), others.stream().map(Offer::repair).toList());
    }
  }
}
