package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.holewise.engine.netlist.DisjointSets;
import org.holewise.engine.wiring.Repair.Slip;

/**
 * How plausible repairs are, as ranks: 0 a usual slip of the hand (a column off, across the groove,
 * on the other rail, past a gap, both leads in one strip, a part put in the wrong way round, a part
 * left out), 1 something that touches nothing else, 2 a lead elsewhere or a link missing or too
 * many, 3 a link's end elsewhere. Common practice, not a statistic.
 */
record Plausibility(Terminals terminals, Layout layout, Ground ground, DisjointSets linked) {
  static final int USUAL = 0;
  static final int ALONE = 1;
  static final int OTHER = 2;
  static final int ODD = 3;

  Plausibility(Terminals terminals, Layout layout, Ground ground) {
    this(terminals, layout, ground, new DisjointSets(layout.strips()));
    for (int end = 0; end < layout.end().length; end += 2) {
      if (layout.end()[end] >= 0 && layout.end()[end + 1] >= 0) {
        linked.union(layout.end()[end], layout.end()[end + 1]);
      }
    }
  }

  /** Sum of the ranks of a set of repairs that does what a way asks for. */
  int of(List<Fix> fixes, Joints joints) {
    int sum = 0;
    for (Fix fix : fixes) {
      sum += turned(fix, fixes) ? USUAL : rank(fix, joints);
    }
    return sum;
  }

  private int rank(Fix fix, Joints joints) {
    if (fix instanceof Fix.Lead lead) {
      return lead(lead.pin(), slip(lead.pin(), joints.strips(lead.strip()).keySet()));
    }
    if (fix instanceof Fix.End end) {
      var from = ground.hole(end.link(), end.end());
      var right = new Slips(ground.board, joints.strips(end.strip()).keySet());
      return end(end.link(), end.end(), right.of(from, shorted(end.link())));
    }
    if (fix instanceof Fix.Add add) {
      return acrossGap(joints.strips(add.from()).keySet(), joints.strips(add.to()).keySet())
          ? USUAL
          : OTHER;
    }
    return fix instanceof Fix.Place ? USUAL : OTHER;
  }

  /** Whether two repairs exchange the two leads of a part. */
  boolean turned(Fix fix, Collection<Fix> others) {
    return fix instanceof Fix.Lead lead
        && others.stream()
            .anyMatch(other -> other instanceof Fix.Lead back && exchange(lead, back));
  }

  private boolean exchange(Fix.Lead lead, Fix.Lead back) {
    int part = terminals.part(lead.pin());
    return lead.pin() != back.pin()
        && part == terminals.part(back.pin())
        && terminals.firstPin[part + 1] - terminals.firstPin[part] == 2
        && joined(lead.strip(), layout.pin()[back.pin()])
        && joined(back.strip(), layout.pin()[lead.pin()]);
  }

  private boolean joined(int one, int other) {
    return one >= 0 && other >= 0 && linked.find(one) == linked.find(other);
  }

  int lead(int pin, Slip slip) {
    return slip != Slip.ELSEWHERE ? USUAL : alone(layout.pin()[pin]) ? ALONE : OTHER;
  }

  int end(int link, int end, Slip slip) {
    return slip != Slip.ELSEWHERE ? USUAL : alone(layout.end()[2 * link + end]) ? ALONE : ODD;
  }

  /** What a lead in a wrong hole looks like. */
  Slip slip(int pin, Collection<Integer> right) {
    return ground
        .hole(pin)
        .map(hole -> new Slips(ground.board, right).of(hole, shorts(pin)))
        .orElse(Slip.ELSEWHERE);
  }

  /** Whether both ends of a link are in one strip. */
  boolean shorted(int link) {
    int from = layout.end()[2 * link];
    return from >= 0 && from == layout.end()[2 * link + 1];
  }

  /** Whether another lead of the part is in the same strip. */
  private boolean shorts(int pin) {
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

  /** Whether two pieces hold two neighbouring parts of one rail. */
  boolean acrossGap(Collection<Integer> one, Collection<Integer> other) {
    return !gap(one, other).isEmpty();
  }

  /** The two parts of one rail that two pieces hold; none where they hold no such. */
  List<Integer> gap(Collection<Integer> one, Collection<Integer> other) {
    var found = new ArrayList<Integer>();
    for (int a : one) {
      for (int b : other) {
        var rail = ground.board.rail(a);
        boolean next = Math.abs(a - b) == 1 && ground.board.board(a) == ground.board.board(b);
        if (found.isEmpty() && next && rail.isPresent() && rail.equals(ground.board.rail(b))) {
          found.addAll(List.of(a, b));
        }
      }
    }
    return found;
  }
}
