package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.board.Hole;

/** Puts choices into holes and ranks them by how plausible they are. */
final class Offers {
  private static final long LINKS = 1L << 32;
  private static final long ADDED = 1L << 40;

  private final Terminals terminals;
  private final Ground ground;
  private final Plausibility plausibility;

  Offers(Terminals terminals, Ground ground, Plausibility plausibility) {
    this.terminals = terminals;
    this.ground = ground;
    this.plausibility = plausibility;
  }

  /**
   * The choices as offers, most plausible first.
   *
   * @param now strips that come first in the lists of the choice that has them, else the nearest do
   */
  List<Offer> of(Collection<Choice> choices, Optional<Fix> now) {
    return choices.stream().map(choice -> of(choice, now)).sorted().toList();
  }

  private Offer of(Choice choice, Optional<Fix> now) {
    if (choice instanceof Choice.Lead lead) {
      return lead(lead, now);
    }
    if (choice instanceof Choice.End end) {
      return end(end, now);
    }
    if (choice instanceof Choice.Add add) {
      return add(add, now);
    }
    if (choice instanceof Choice.Remove gone) {
      var where = ground.link(gone.link());
      return new Offer(
          choice,
          new Repair.RemoveLink(gone.link(), where, name(gone.joins()), name(gone.and())),
          new Fix.Remove(gone.link()),
          Plausibility.OTHER,
          LINKS + 4L * gone.link(),
          true);
    }
    int part = ((Choice.Place) choice).part();
    return new Offer(
        choice,
        new Repair.PlacePart(terminals.parts.get(part).ref()),
        new Fix.Place(part),
        Plausibility.USUAL,
        terminals.firstPin[part],
        true);
  }

  private Offer lead(Choice.Lead lead, Optional<Fix> now) {
    int pin = lead.pin();
    int strip =
        now.filter(fix -> fix instanceof Fix.Lead).map(fix -> ((Fix.Lead) fix).strip()).orElse(-1);
    var to = holes(lead.to(), ground.near(pin), strip);
    var slip = plausibility.slip(pin, inNets(lead.to()));
    int net = lead.net() < 0 ? -1 : net(to, lead.to(), lead.net());
    var repair =
        new Repair.MoveLead(
            terminals.pins.get(pin), ground.hole(pin), name(net), name(lead.joins()), to, slip);
    var fix = new Fix.Lead(pin, target(to, lead.to()));
    return new Offer(lead, repair, fix, plausibility.lead(pin, slip), pin, !to.isEmpty());
  }

  private Offer end(Choice.End end, Optional<Fix> now) {
    Hole from = ground.hole(end.link(), end.end());
    int strip =
        now.filter(fix -> fix instanceof Fix.End).map(fix -> ((Fix.End) fix).strip()).orElse(-1);
    var to = holes(end.to(), from, strip);
    var slip = new Slips(ground.board, inNets(end.to())).of(from, plausibility.shorted(end.link()));
    int net = net(to, end.to(), end.net());
    return new Offer(
        end,
        new Repair.MoveLinkEnd(end.link(), end.end(), from, name(net), name(end.joins()), to, slip),
        new Fix.End(end.link(), end.end(), target(to, end.to())),
        plausibility.end(end.link(), end.end(), slip),
        LINKS + 4L * end.link() + 1 + end.end(),
        !to.isEmpty());
  }

  /** Nearest pairs first; at a rail's gap those of the rail. */
  private Offer add(Choice.Add add, Optional<Fix> now) {
    var one = add.from().keySet();
    var other = add.to().keySet();
    var gap = plausibility.gap(one, other);
    var first = now.filter(fix -> fix instanceof Fix.Add).map(fix -> sides(add, (Fix.Add) fix));
    var pair = first.or(() -> gap.isEmpty() ? Optional.empty() : Optional.of(gap));
    var start =
        ground.nearest(
            pair.<Collection<Integer>>map(p -> p.subList(0, 1)).orElse(one),
            pair.<Collection<Integer>>map(p -> p.subList(1, 2)).orElse(other));
    var to = holes(add.to(), start, pair.map(p -> p.get(1)).orElse(-1));
    var from =
        holes(add.from(), to.isEmpty() ? start : to.get(0), pair.map(p -> p.get(0)).orElse(-1));
    return new Offer(
        add,
        new Repair.AddLink(from, to, name(add.net()), !gap.isEmpty()),
        new Fix.Add(target(from, add.from()), target(to, add.to())),
        gap.isEmpty() ? Plausibility.OTHER : Plausibility.USUAL,
        ADDED + one.iterator().next(),
        !from.isEmpty() && !to.isEmpty());
  }

  /** The strips of an added link as the choice has its sides. */
  private static List<Integer> sides(Choice.Add add, Fix.Add fix) {
    return add.from().containsKey(fix.from())
        ? List.of(fix.from(), fix.to())
        : List.of(fix.to(), fix.from());
  }

  /** Free holes: those of one strip, then those in nets, then others; the nearest first in each. */
  private List<Hole> holes(Map<Integer, Integer> strips, Hole near, int first) {
    var ownNets = inNets(strips);
    var holes = new ArrayList<>(ground.free(ownNets, near));
    holes.addAll(
        ground.free(strips.keySet().stream().filter(s -> !ownNets.contains(s)).toList(), near));
    if (!holes.isEmpty() && strip(holes.get(0)) != first) {
      holes.sort(Comparator.comparing(hole -> strip(hole) != first));
    }
    return holes;
  }

  private static List<Integer> inNets(Map<Integer, Integer> strips) {
    return strips.entrySet().stream()
        .filter(entry -> entry.getValue() >= 0)
        .map(Map.Entry::getKey)
        .toList();
  }

  private int net(List<Hole> to, Map<Integer, Integer> strips, int usual) {
    int net = to.isEmpty() ? -1 : strips.getOrDefault(strip(to.get(0)), -1);
    return net < 0 ? usual : net;
  }

  private int target(List<Hole> to, Map<Integer, Integer> strips) {
    return to.isEmpty() ? strips.keySet().iterator().next() : strip(to.get(0));
  }

  private int strip(Hole hole) {
    return ground.board.stripOrNone(hole);
  }

  private String name(int net) {
    return net < 0 ? "" : terminals.names.get(net);
  }
}
