package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts in series: two-terminal parts that feed nothing, each joined to the next by a net of just
 * those two. Their order does not matter, the direction of those that have one does.
 *
 * @param places the parts from one end to the other
 * @param in wanted net on the near side of each place
 * @param out wanted net on its far side
 * @param near terminal that faces the near side at each place
 */
record Chain(List<Integer> places, int[] in, int[] out, int[] near) {

  /** The longest chains of at least two parts; a closed ring is one that ends where it begins. */
  static List<Chain> of(Terminals t) {
    var chains = new ArrayList<Chain>();
    var walked = new boolean[t.parts.size()];
    for (int part = 0; part < walked.length; part++) {
      if (!walked[part] && fits(t, part)) {
        for (int terminal : t.terminals(part)) {
          if (!walked[part] && next(t, part, terminal) < 0) {
            chains.add(walk(t, part, terminal, walked));
          }
        }
      }
    }
    for (int part = 0; part < walked.length; part++) {
      if (!walked[part] && fits(t, part)) {
        chains.add(walk(t, part, t.terminals(part)[0], walked));
      }
    }
    chains.removeIf(chain -> chain.places.size() < 2);
    return chains;
  }

  private static Chain walk(Terminals t, int first, int firstNear, boolean[] walked) {
    var places = new ArrayList<Integer>();
    var nears = new ArrayList<Integer>();
    int part = first;
    int near = firstNear;
    while (part >= 0 && !walked[part]) {
      walked[part] = true;
      places.add(part);
      nears.add(near);
      int far = other(t, part, near);
      part = next(t, part, far);
      if (part >= 0) {
        near = facing(t, part, t.net[t.pinsOf[far][0]]);
      }
    }
    int n = places.size();
    int[] in = new int[n];
    int[] out = new int[n];
    int[] own = new int[n];
    for (int i = 0; i < n; i++) {
      own[i] = nears.get(i);
      in[i] = t.net[t.pinsOf[own[i]][0]];
      out[i] = t.net[t.pinsOf[other(t, places.get(i), own[i])][0]];
    }
    return new Chain(places, in, out, own);
  }

  private static boolean fits(Terminals t, int part) {
    return t.terminals(part).length == 2 && !t.parts.get(part).kind().source();
  }

  /** The part that follows in the chain through a terminal; -1 where the chain ends. */
  private static int next(Terminals t, int part, int terminal) {
    int net = t.net[t.pinsOf[terminal][0]];
    if (t.size[net] != 2) {
      return -1;
    }
    for (int pin = 0; pin < t.net.length; pin++) {
      if (t.net[pin] == net && t.terminal[pin] != terminal) {
        int other = t.part(pin);
        return other != part && fits(t, other) ? other : -1;
      }
    }
    return -1;
  }

  private static int other(Terminals t, int part, int terminal) {
    int[] own = t.terminals(part);
    return own[0] == terminal ? own[1] : own[0];
  }

  private static int facing(Terminals t, int part, int net) {
    int[] own = t.terminals(part);
    return t.net[t.pinsOf[own[0]][0]] == net ? own[0] : own[1];
  }
}
