package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

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

  final Strips strips;
  final Islands linked;
  private final Islands joined;
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
    strips = new Strips(wanted, layout);
    linked = strips.islands(false);
    joined = strips.islands(true);
    for (int part = 0; part < decided.length; part++) {
      decided[part] = layout.parts()[part] != Layout.Presence.PLACED;
      open += decided[part] ? 0 : 1;
    }
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

  boolean decided(int part) {
    return decided[part];
  }

  /** Whether an option's place or slot is used up. */
  boolean gone(Option option) {
    return taken[option.place()] || slots[option.slot()] == 0;
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
    var fits = new Fits(this);
    int slack = bound - moved - fits.ahead - span(fits.twinsAhead);
    if (slack >= 0) {
      int part = fits.choose(slack);
      decide(part, fits.misfits[part], slack);
    }
  }

  private void decide(int part, int[] misfits, int slack) {
    int least = Fits.least(misfits);
    decided[part] = true;
    open--;
    var tried = new ArrayList<Integer>();
    int most = Math.min(least + slack, first(part + 1) - first(part));
    for (int misfit = least; misfit <= most && !stop; misfit++) {
      for (int i = 0; i < misfits.length && !stop; i++) {
        Option option = wanted.options[part][i];
        if (misfits[i] == misfit && !coveredBySwap(option.place(), tried)) {
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
      for (int strip : strips.used) {
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
    } else if (strips.outvoted(strip, net)) {
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
    for (int pin : strips.pinsIn[strip]) {
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

  private int first(int part) {
    return wanted.terminals.firstPin[part];
  }
}
