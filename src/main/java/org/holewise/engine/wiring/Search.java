package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.holewise.engine.netlist.DisjointSets;

/**
 * Finds the ways to repair a layout with at most so many repairs, by depth first with bounds.
 *
 * <p><b>Problem.</b> After repair each strip belongs to one wanted net at most. Choose, for every
 * part, an {@link Option} (the place of the schematic that it takes) and for every pin whether it
 * stays; a strip is labelled with the wanted net of the pins that stay in it. Given that,
 *
 * <pre>  repairs = pins that move + links between strips of different labels
 *          + for each net, pieces of it that nothing joins − 1 − joints made by what moves anyway
 * </pre>
 *
 * where a moved end of a link, or a moved twin, may join two pieces. Strips without pins take
 * whatever label is best ({@link Joints}). Missing parts take the places left over and are not
 * counted here.
 *
 * <p><b>Method.</b> The part with the fewest options that fit under the bound is decided first, its
 * likeliest option first, then pin by pin. Lower bound of what is partly decided: pins moved + for
 * each part still open, the pins that must move under its best option + the larger of the joints
 * that must be cut and those that must be made ({@link Islands}); none of the three ever falls as
 * more is decided. Places that a {@link Swap} exchanges are tried once. A pin never moves away from
 * a strip that ends up with its own net: staying is cheaper.
 *
 * <p>Deterministic: the work is limited by counting nodes, not by a clock.
 */
final class Search {

  /** Told of each way found; answers whether to look for more. */
  interface Ways {
    boolean found(Search way, Joints joints);
  }

  static final byte OPEN = 0;
  static final byte STAYS = 1;
  static final byte MOVES = 2;

  final Wanted wanted;
  final Layout layout;

  /** Label of each strip in which a pin stays, else -1. */
  final int[] label;

  /** Wanted net of each pin whose part is decided. */
  final int[] want;

  /** Whether each pin stays; a pin in no strip stays open. */
  final byte[] state;

  /** Terminals in no strip that belong to a net with others. */
  final boolean[] loose;

  final int[] used;
  final Islands linked;
  private final Islands joined;
  private final int[][] pinsIn;
  private final int[][] votes;
  private final boolean[] decided;
  private final boolean[] taken;
  private final int[] slots;
  private int open;
  private int moved;
  private int movedTwins;
  private int bound;
  private int nodes;
  private boolean stop;
  private Ways ways = (way, joints) -> false;

  Search(Wanted wanted, Layout layout) {
    this.wanted = wanted;
    this.layout = layout;
    Terminals t = wanted.terminals;
    label = new int[layout.strips()];
    Arrays.fill(label, -1);
    want = new int[t.pins.size()];
    state = new byte[t.pins.size()];
    loose = new boolean[t.pinsOf.length];
    decided = new boolean[t.parts.size()];
    taken = new boolean[t.parts.size()];
    slots = wanted.slots.clone();
    pinsIn = pinsIn(t);
    used = used();
    var sets = new DisjointSets(layout.strips());
    for (int link = 0; link < layout.links(); link++) {
      int from = layout.end()[2 * link];
      int to = layout.end()[2 * link + 1];
      if (from >= 0 && to >= 0) {
        sets.union(from, to);
      }
    }
    int nets = t.size.length;
    linked = new Islands(sets, used, layout.strips(), nets);
    for (int[] twins : t.pinsOf) {
      for (int pin : twins) {
        int one = layout.pin()[pin];
        int other = layout.pin()[twins[0]];
        if (one >= 0 && other >= 0) {
          sets.union(one, other);
        }
      }
    }
    joined = new Islands(sets, used, layout.strips(), nets);
    for (int part = 0; part < decided.length; part++) {
      decided[part] = layout.parts()[part] != Layout.Presence.PLACED;
      open += decided[part] ? 0 : 1;
    }
    votes = votes();
  }

  /**
   * Looks for ways of at most {@code bound} repairs, missing parts not counted.
   *
   * @param limit how many nodes to look at
   * @return nodes left; none where the limit ended the search before its end
   */
  int run(int bound, int limit, Ways ways) {
    this.bound = bound;
    this.ways = ways;
    nodes = limit;
    stop = false;
    parts();
    return Math.max(0, nodes);
  }

  /** From now on only what costs less is of interest. */
  void below(int cost) {
    bound = cost - 1;
  }

  /** Counts a node; false where there are none left. */
  boolean spend() {
    stop |= --nodes <= 0;
    return !stop;
  }

  /** From now on only so many nodes. */
  void spendAtMost(int limit) {
    nodes = Math.min(nodes, limit);
  }

  int moved() {
    return moved;
  }

  int bound() {
    return bound;
  }

  private void parts() {
    if (stop || !spend()) {
      return;
    }
    if (open == 0) {
      stop |= !new Labels(this).each(joints -> ways.found(this, joints));
      return;
    }
    int[][] misfits = new int[decided.length][];
    int ahead = 0;
    int twinsAhead = 0;
    for (int part = 0; part < decided.length; part++) {
      if (!decided[part]) {
        misfits[part] = misfits(part);
        ahead += least(misfits[part]);
        twinsAhead += hasTwins(part) ? least(misfits[part]) : 0;
      }
    }
    int slack = bound - moved - ahead - span(twinsAhead);
    if (slack >= 0) {
      decide(choose(misfits, slack), misfits, slack);
    }
  }

  /** The part with the fewest options within the slack, then with the fewest that fit best. */
  private int choose(int[][] misfits, int slack) {
    int best = -1;
    long bestKey = Long.MAX_VALUE;
    for (int part = 0; part < decided.length; part++) {
      if (!decided[part]) {
        int least = least(misfits[part]);
        long within = 0;
        long fitting = 0;
        for (int misfit : misfits[part]) {
          within += misfit <= least + slack ? 1 : 0;
          fitting += misfit == least ? 1 : 0;
        }
        long key = (within * 1000 + fitting) * 1000 + openPins(part);
        if (key < bestKey) {
          bestKey = key;
          best = part;
        }
      }
    }
    return best;
  }

  private int openPins(int part) {
    int count = 0;
    for (int pin = first(part); pin < first(part + 1); pin++) {
      int strip = layout.pin()[pin];
      count += strip >= 0 && label[strip] < 0 ? 1 : 0;
    }
    return count;
  }

  private void decide(int part, int[][] misfits, int slack) {
    int[] own = misfits[part];
    int least = least(own);
    decided[part] = true;
    open--;
    var tried = new ArrayList<Integer>();
    int most = Math.min(least + slack, first(part + 1) - first(part));
    for (int misfit = least; misfit <= most && !stop; misfit++) {
      for (int i = 0; i < own.length && !stop; i++) {
        Option option = wanted.options[part][i];
        if (own[i] == misfit && !coveredBySwap(option.place(), tried)) {
          taken[option.place()] = true;
          slots[option.slot()]--;
          pins(part, option, 0);
          slots[option.slot()]++;
          taken[option.place()] = false;
          if (!tried.contains(option.place())) {
            tried.add(option.place());
          }
        }
      }
    }
    open++;
    decided[part] = false;
  }

  private boolean coveredBySwap(int place, List<Integer> tried) {
    for (int other : tried) {
      if (wanted.swap(place, other).filter(this::untouched).isPresent()) {
        return true;
      }
    }
    return false;
  }

  private boolean untouched(Swap swap) {
    for (int place : swap.places()) {
      if (taken[place]) {
        return false;
      }
    }
    for (int net : swap.nets()) {
      for (int strip : used) {
        if (label[strip] == net) {
          return false;
        }
      }
    }
    return true;
  }

  /** Decides the pins of a part from one of them on. */
  private void pins(int part, Option option, int i) {
    if (i == option.want().length) {
      parts();
      return;
    }
    int pin = first(part) + i;
    int net = option.want()[i];
    int strip = layout.pin()[pin];
    want[pin] = net;
    if (strip < 0) {
      nowhere(part, option, i);
    } else if (label[strip] >= 0) {
      if (label[strip] == net) {
        as(STAYS, part, option, i);
      } else {
        move(part, option, i);
      }
    } else if (outvoted(strip, net)) {
      move(part, option, i);
      stay(part, option, i);
    } else {
      stay(part, option, i);
      move(part, option, i);
    }
  }

  private void as(byte now, int part, Option option, int i) {
    int pin = first(part) + i;
    state[pin] = now;
    if (moved + span(0) <= bound) {
      pins(part, option, i + 1);
    }
    state[pin] = OPEN;
  }

  private void stay(int part, Option option, int i) {
    int net = option.want()[i];
    int strip = layout.pin()[first(part) + i];
    if (stop || left(strip, net)) {
      return;
    }
    label[strip] = net;
    linked.label(strip, net);
    joined.label(strip, net);
    as(STAYS, part, option, i);
    joined.unlabel(strip, net);
    linked.unlabel(strip, net);
    label[strip] = -1;
  }

  private void move(int part, Option option, int i) {
    int pin = first(part) + i;
    if (stop || layout.fixedPin()[pin]) {
      return;
    }
    int twin = wanted.terminals.pinsOf[wanted.terminals.terminal[pin]].length > 1 ? 1 : 0;
    moved++;
    movedTwins += twin;
    as(MOVES, part, option, i);
    movedTwins -= twin;
    moved--;
  }

  /** A pin in no strip must be put somewhere, unless a twin is or nothing else is on its net. */
  private void nowhere(int part, Option option, int i) {
    Terminals t = wanted.terminals;
    int pin = first(part) + i;
    int terminal = t.terminal[pin];
    boolean needed = t.size[want[pin]] > 1 && t.pinsOf[terminal][0] == pin && !somewhere(terminal);
    loose[terminal] = needed;
    moved += needed ? 1 : 0;
    as(OPEN, part, option, i);
    moved -= needed ? 1 : 0;
    loose[terminal] = false;
  }

  private boolean somewhere(int terminal) {
    for (int pin : wanted.terminals.pinsOf[terminal]) {
      if (layout.pin()[pin] >= 0) {
        return true;
      }
    }
    return false;
  }

  /** Whether a pin of that net has moved out of the strip. */
  private boolean left(int strip, int net) {
    for (int pin : pinsIn[strip]) {
      if (state[pin] == MOVES && want[pin] == net) {
        return true;
      }
    }
    return false;
  }

  /** Joints that must be cut or made, beyond those that twins make which move now or later. */
  private int span(int twinsAhead) {
    return Math.max(linked.toCut(), joined.toJoin() - movedTwins - twinsAhead);
  }

  private boolean hasTwins(int part) {
    Terminals t = wanted.terminals;
    return t.terminals(part).length < t.firstPin[part + 1] - t.firstPin[part];
  }

  /** For each option of a part, the pins that must move; beyond reach where it is not to be had. */
  private int[] misfits(int part) {
    Option[] options = wanted.options[part];
    int[] misfits = new int[options.length];
    for (int i = 0; i < options.length; i++) {
      Option option = options[i];
      misfits[i] = taken[option.place()] || slots[option.slot()] == 0 ? NOT_TO_BE_HAD : 0;
      for (int j = 0; j < option.want().length; j++) {
        int strip = layout.pin()[first(part) + j];
        if (strip >= 0 && label[strip] >= 0 && label[strip] != option.want()[j]) {
          misfits[i]++;
        }
      }
    }
    return misfits;
  }

  private static final int NOT_TO_BE_HAD = 10_000;

  private static int least(int[] numbers) {
    int least = NOT_TO_BE_HAD;
    for (int number : numbers) {
      least = Math.min(least, number);
    }
    return least;
  }

  /** Whether more pins of a strip may want some other net than this one. */
  private boolean outvoted(int strip, int net) {
    int[] own = votes[strip];
    for (int other = 0; other < own.length; other++) {
      if (own[other] > own[net]) {
        return true;
      }
    }
    return false;
  }

  /** How many pins of each strip may want each net. */
  private int[][] votes() {
    int nets = wanted.terminals.size.length;
    var all = new int[layout.strips()][];
    for (int strip : used) {
      all[strip] = new int[nets];
      for (int pin : pinsIn[strip]) {
        int part = wanted.terminals.part(pin);
        int own = pin - first(part);
        int vote = strip;
        Arrays.stream(wanted.options[part])
            .mapToInt(option -> option.want()[own])
            .distinct()
            .forEach(net -> all[vote][net]++);
      }
    }
    return all;
  }

  private int first(int part) {
    return wanted.terminals.firstPin[part];
  }

  private int[][] pinsIn(Terminals t) {
    var in = new ArrayList<List<Integer>>();
    IntStream.range(0, layout.strips()).forEach(strip -> in.add(new ArrayList<>()));
    for (int pin = 0; pin < t.pins.size(); pin++) {
      if (layout.pin()[pin] >= 0) {
        in.get(layout.pin()[pin]).add(pin);
      }
    }
    return in.stream()
        .map(pins -> pins.stream().mapToInt(Integer::intValue).toArray())
        .toArray(int[][]::new);
  }

  private int[] used() {
    return IntStream.concat(Arrays.stream(layout.pin()), Arrays.stream(layout.end()))
        .filter(strip -> strip >= 0)
        .distinct()
        .boxed()
        .sorted(Comparator.naturalOrder())
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
