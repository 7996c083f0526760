package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.List;

/**
 * A set of repairs that leaves no link behind that changes no net.
 *
 * <p><b>Method.</b> A single repair that does it all is sought first ({@link Strict}). Else each
 * repair of the nets is exchanged for the one, among all that could stand for it (the same act to
 * another strip first), that leaves the fewest such links; what still is left is removed, from the
 * last to the first. Larger sets need not be the smallest.
 */
final class Tidied {
  private static final int NODES = 2_000;
  private static final int MOST_EXCHANGED = 4;

  private final Wanted wanted;
  private final Layout layout;
  private final List<Fix> fixes;

  private Tidied(Wanted wanted, Layout layout, List<Fix> fixes) {
    this.wanted = wanted;
    this.layout = layout;
    this.fixes = new ArrayList<>(fixes);
  }

  static List<Fix> of(Wanted wanted, Layout layout, List<Fix> fixes) {
    if (fixes.size() <= 1) {
      var singles = Strict.of(wanted, layout, NODES).choices();
      if (!singles.isEmpty()) {
        return List.of(singles.iterator().next().fixes().get(0));
      }
    }
    var tidied = new Tidied(wanted, layout, fixes);
    if (fixes.size() <= MOST_EXCHANGED) {
      tidied.exchange(true);
      tidied.exchange(false);
    }
    tidied.remove();
    return tidied.fixes;
  }

  private void exchange(boolean sameAct) {
    for (int i = 0; i < fixes.size(); i++) {
      Fix now = fixes.get(i);
      Layout others = after(i);
      int least = Spares.count(wanted.terminals, others.after(now));
      var choices = least == 0 ? List.<Choice>of() : singles(others);
      for (Choice choice : choices) {
        for (Fix fix : choice.does(now) || !sameAct ? choice.fixes() : List.<Fix>of()) {
          int spares = Spares.count(wanted.terminals, others.after(fix));
          if (spares < least) {
            least = spares;
            fixes.set(i, fix);
          }
        }
      }
    }
  }

  private List<Choice> singles(Layout others) {
    return List.copyOf(Singles.of(wanted, others, NODES).choices());
  }

  private void remove() {
    Layout after = after(-1);
    int spare = Spares.last(wanted.terminals, after);
    while (spare >= 0 && spare < layout.links()) {
      fixes.add(new Fix.Remove(spare));
      after = after.after(new Fix.Remove(spare));
      spare = Spares.last(wanted.terminals, after);
    }
  }

  private Layout after(int but) {
    Layout after = layout;
    for (int i = 0; i < fixes.size(); i++) {
      after = i == but ? after : after.after(fixes.get(i));
    }
    return after;
  }
}
