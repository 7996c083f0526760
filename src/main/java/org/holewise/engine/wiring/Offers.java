package org.holewise.engine.wiring;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Rail;
import org.holewise.engine.wiring.Repair.Slip;

/** Puts choices into holes and ranks them by how plausible they are. */
final class Offers {
  private static final long LINKS = 1L << 32;
  private static final long ADDED = 1L << 40;

  private final Terminals terminals;
  private final Layout layout;
  private final Build build;
  private final Ground ground;

  /**
   * @param layout the build as it was entered
   */
  Offers(Terminals terminals, Layout layout, Build build, Ground ground) {
    this.terminals = terminals;
    this.layout = layout;
    this.build = build;
    this.ground = ground;
  }

  /** Most plausible first. Holes of the strips that {@code now} uses come first where it is one. */
  List<Offer> of(Collection<Choice> choices, Fix now) {
    return choices.stream().map(choice -> of(choice, now)).sorted().toList();
  }

  private Offer of(Choice choice, Fix now) {
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
      var repair =
          new Repair.RemoveLink(
              gone.link(), build.links().get(gone.link()), name(gone.joins()), name(gone.and()));
      return new Offer(
          choice, repair, new Fix.Remove(gone.link()), 2, LINKS + 4L * gone.link(), true);
    }
    int part = ((Choice.Place) choice).part();
    return new Offer(
        choice,
        new Repair.PlacePart(terminals.parts.get(part).ref()),
        new Fix.Place(part),
        0,
        terminals.firstPin[part],
        true);
  }

  private Offer lead(Choice.Lead lead, Fix now) {
    int pin = lead.pin();
    var from = ground.hole(pin);
    int strip = now instanceof Fix.Lead fix && fix.pin() == pin ? fix.strip() : -1;
    var to = holes(lead.to(), ground.near(pin), strip);
    Slip slip = from.map(hole -> slip(hole, lead.to(), shorted(pin))).orElse(Slip.ELSEWHERE);
    int rank = slip != Slip.ELSEWHERE ? 0 : alone(layout.pin()[pin]) ? 1 : 2;
    int net = to.isEmpty() ? lead.net() : Objects.requireNonNull(lead.to().get(strip(to.get(0))));
    return new Offer(
        lead,
        new Repair.MoveLead(
            terminals.pins.get(pin),
            from,
            lead.net() < 0 ? "" : name(net < 0 ? lead.net() : net),
            name(lead.joins()),
            to,
            slip),
        new Fix.Lead(pin, target(to, strip, lead.to())),
        rank,
        pin,
        !to.isEmpty());
  }

  private Offer end(Choice.End end, Fix now) {
    Hole from = build.links().get(end.link()).end(end.end());
    int at = layout.end()[2 * end.link() + end.end()];
    boolean shorted = at >= 0 && at == layout.end()[2 * end.link() + 1 - end.end()];
    boolean same = now instanceof Fix.End fix && fix.link() == end.link() && fix.end() == end.end();
    int strip = same ? ((Fix.End) now).strip() : -1;
    var to = holes(end.to(), from, strip);
    Slip slip = slip(from, end.to(), shorted);
    int rank = slip != Slip.ELSEWHERE ? 0 : alone(at) ? 1 : 3;
    int net = to.isEmpty() ? end.net() : Objects.requireNonNull(end.to().get(strip(to.get(0))));
    return new Offer(
        end,
        new Repair.MoveLinkEnd(
            end.link(),
            end.end(),
            from,
            name(net < 0 ? end.net() : net),
            name(end.joins()),
            to,
            slip),
        new Fix.End(end.link(), end.end(), target(to, strip, end.to())),
        rank,
        LINKS + 4L * end.link() + 1 + end.end(),
        !to.isEmpty());
  }

  private Offer add(Choice.Add add, Fix now) {
    var gap = gap(add);
    int oneNow = -1;
    int otherNow = -1;
    if (now instanceof Fix.Add fix) {
      boolean straight = add.from().containsKey(fix.from());
      oneNow = straight ? fix.from() : fix.to();
      otherNow = straight ? fix.to() : fix.from();
    }
    var all = ground.free(add.from().keySet(), new Hole(1, "a", 1));
    var others = ground.free(add.to().keySet(), new Hole(1, "a", 1));
    var nearest =
        all.stream()
            .min(Comparator.comparingInt(hole -> away(hole, others, gap)))
            .orElse(new Hole(1, "a", 1));
    var to = holes(add.to(), nearest, otherNow, gap);
    var from = holes(add.from(), to.isEmpty() ? nearest : to.get(0), oneNow, gap);
    boolean open = !from.isEmpty() && !to.isEmpty();
    return new Offer(
        add,
        new Repair.AddLink(from, to, name(add.net()), gap.isPresent()),
        new Fix.Add(target(from, oneNow, add.from()), target(to, otherNow, add.to())),
        gap.isPresent() ? 0 : 2,
        ADDED + add.from().keySet().iterator().next(),
        open);
  }

  /** The rail that both sides have a part of. */
  private Optional<Rail> gap(Choice.Add add) {
    BoardModel board = build.board();
    for (int one : add.from().keySet()) {
      for (int other : add.to().keySet()) {
        var rail = board.rail(one);
        if (Math.abs(one - other) == 1
            && board.board(one) == board.board(other)
            && rail.isPresent()
            && rail.equals(board.rail(other))) {
          return rail;
        }
      }
    }
    return Optional.empty();
  }

  private static int away(Hole hole, List<Hole> others, Optional<Rail> gap) {
    int least = Integer.MAX_VALUE - (beside(hole, gap) ? 1_000_000 : 0);
    for (Hole other : others) {
      int bonus = beside(hole, gap) && beside(other, gap) ? 1_000_000 : 0;
      least = Math.min(least, Ground.distance(hole, other) - bonus);
    }
    return least;
  }

  private static boolean beside(Hole hole, Optional<Rail> gap) {
    return gap.filter(rail -> rail.track().equals(hole.track())).isPresent();
  }

  private List<Hole> holes(Map<Integer, Integer> strips, Hole near, int now, Optional<Rail> gap) {
    return holes(strips, near, now).stream()
        .sorted(Comparator.comparingInt(hole -> beside(hole, gap) ? 0 : 1))
        .toList();
  }

  /** Free holes, nearest first; those of a strip that is in use for it come before all others. */
  private List<Hole> holes(Map<Integer, Integer> strips, Hole near, int now) {
    var free = ground.free(strips.keySet(), near);
    boolean first = free.isEmpty() || strip(free.get(0)) == now;
    return first
        ? free
        : free.stream()
            .sorted(Comparator.comparingInt(hole -> strip(hole) == now ? 0 : 1))
            .toList();
  }

  private int target(List<Hole> to, int now, Map<Integer, Integer> strips) {
    if (!to.isEmpty()) {
      return strip(to.get(0));
    }
    return now >= 0 ? now : strips.keySet().iterator().next();
  }

  private int strip(Hole hole) {
    return build.board().stripOrNone(hole);
  }

  private Slip slip(Hole from, Map<Integer, Integer> to, boolean shorted) {
    var right =
        to.keySet().stream().filter(strip -> Objects.requireNonNull(to.get(strip)) >= 0).toList();
    return new Slips(build.board(), right).of(from, shorted);
  }

  private boolean shorted(int pin) {
    int part = terminals.part(pin);
    for (int other = terminals.firstPin[part]; other < terminals.firstPin[part + 1]; other++) {
      if (layout.pin()[pin] >= 0
          && layout.pin()[other] == layout.pin()[pin]
          && terminals.terminal[other] != terminals.terminal[pin]) {
        return true;
      }
    }
    return false;
  }

  /** Whether a strip holds but one lead or end; that which is in no strip is alone as well. */
  private boolean alone(int strip) {
    int there = 0;
    for (int other : layout.pin()) {
      there += other == strip ? 1 : 0;
    }
    for (int other : layout.end()) {
      there += other == strip ? 1 : 0;
    }
    return strip < 0 || there == 1;
  }

  private String name(int net) {
    return net < 0 ? "" : terminals.names.get(net);
  }
}
