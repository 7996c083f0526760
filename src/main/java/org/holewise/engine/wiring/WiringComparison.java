package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
 * <p><b>Method.</b> A smallest set is found ({@link Smallest}). Then, the others being done, every
 * single repair that could stand for one of them is listed, and the most plausible put in its
 * place; so the repairs of a set always fit together when each uses its first holes.
 *
 * <p>Pins of a chip do not move one by one: a chip that sits wrongly is put in anew ({@link
 * ChipSeats}), what else is wrong about it is put right with links.
 *
 * <p>Holes that are full do not count when the set is sought; a repair for which no free hole
 * remains is offered only where there is no other, with an empty list. Unknown parts and pins and
 * second placings are left out of account. A pure function; the work is bounded by counting steps,
 * so that a build with many slips may get a set that is not the smallest, or lists that lack some
 * repair.
 */
public final class WiringComparison {

  /** Steps spent on one repair's list at most, and on all lists of a pass together. */
  private static final int NODES = 5_000;

  private static final int ALL_NODES = 20_000;

  /** Larger sets are improved in one pass only. */
  private static final int MOST_IMPROVED = 6;

  private static final int PASSES = 2;

  private final Wanted wanted;
  private final Layout layout;
  private final Plausibility plausibility;
  private final Offers offers;
  private final List<Fix> fixes;
  private final ChipSeats chips;
  private final int nodes;

  private WiringComparison(Exercise exercise, Build entered) {
    wanted = new Wanted(exercise);
    chips = ChipSeats.of(wanted.terminals, entered);
    Build build = chips.build();
    var ground = new Ground(wanted.terminals, build);
    Layout rigid = Layout.of(wanted.terminals, build);
    var seated = new Plausibility(wanted.terminals, rigid, ground);
    var found = Smallest.of(wanted, rigid, seated);
    layout = found.isPresent() ? rigid : Layout.free(wanted.terminals, build);
    plausibility = new Plausibility(wanted.terminals, layout, ground);
    offers = new Offers(wanted.terminals, ground, plausibility);
    fixes =
        new ArrayList<>(
            found.or(() -> Smallest.of(wanted, layout, plausibility)).orElse(List.of()));
    nodes = Math.min(NODES, ALL_NODES / Math.max(1, fixes.size()));
  }

  public static WiringReport compare(Exercise exercise, Build build) {
    return new WiringComparison(exercise, build).report();
  }

  private WiringReport report() {
    int passes = fixes.size() <= MOST_IMPROVED ? PASSES : 1;
    int pass = 0;
    while (pass < passes && improve()) {
      pass++;
    }
    var offered = new ArrayList<Offered>();
    for (int i = 0; i < fixes.size(); i++) {
      offered.add(offered(i));
    }
    offered.sort(Comparator.comparing(Offered::now));
    var differences = new ArrayList<Difference>();
    chips.repairs().forEach(repair -> differences.add(new Difference(repair, List.of())));
    offered.forEach(one -> differences.add(one.difference()));
    double leads = Math.max(1, wanted.terminals.pins.size());
    return new WiringReport(
        differences.isEmpty(), Math.max(0, 1 - differences.size() / leads), differences);
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
        Fix better = better(singles, fixes.get(i));
        changed |= !better.equals(fixes.get(i));
        fixes.set(i, better);
      }
    }
    return changed;
  }

  /** The most plausible repair; the same with its nearest holes where a part is turned round. */
  private Fix better(Strict singles, Fix now) {
    var all = offers.of(singles.choices(), Optional.empty());
    boolean stays = plausibility.turned(now, fixes);
    return all.stream()
        .filter(offer -> !stays || offer.choice().does(now))
        .findFirst()
        .orElse(all.get(0))
        .fix();
  }

  /** What would do in one's place, all the others done. */
  private Strict singles(int i) {
    Layout others = layout;
    for (int j = 0; j < fixes.size(); j++) {
      others = j == i ? others : others.after(fixes.get(j));
    }
    return Strict.of(wanted, others, nodes);
  }

  private Offered offered(int i) {
    Fix now = fixes.get(i);
    var all =
        now instanceof Fix.Place
            ? List.<Offer>of()
            : offers.of(singles(i).choices(), Optional.of(now));
    var own =
        all.stream()
            .filter(offer -> offer.choice().does(now))
            .findFirst()
            .orElseGet(() -> offers.of(List.of(choice(now)), Optional.of(now)).get(0));
    return new Offered(own, all.stream().filter(offer -> !offer.choice().does(now)).toList());
  }

  /** A repair as it was found, where its list was cut short. */
  private Choice choice(Fix fix) {
    return Choice.of(fix, wanted.terminals);
  }

  private record Offered(Offer now, List<Offer> others) {
    Difference difference() {
      return new Difference(now.repair(), others.stream().map(Offer::repair).toList());
    }
  }
}
