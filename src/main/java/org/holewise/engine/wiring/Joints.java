package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.engine.netlist.DisjointSets;

/**
 * What it takes to cut and join, all strips being labelled: links between strips of different
 * labels must go, pieces of a net that nothing joins must be joined. A link that must go keeps one
 * end and may join two pieces with the other; a twin that moves may join what its twins touch to
 * another piece. Which of the links joins which net is a matching (augmenting paths, after Kuhn
 * 1955).
 */
final class Joints {
  private static final int IMPOSSIBLE = 100_000;

  final Search way;

  /** Label of each strip, -1 where it is of no net. */
  final int[] label;

  /** Strips as they hang together once the cuts are made. */
  final DisjointSets pieces;

  /** For each net, a strip of each of its pieces in which pins stay. */
  final List<List<Integer>> piecesOf = new ArrayList<>();

  /** Links that must go. */
  final List<Integer> cuts = new ArrayList<>();

  /**
   * End that each of the cuts keeps, to join pieces of that end's net with the other; -1 for none.
   */
  final int[] keeps;

  /** Joints that each net still lacks once what moves anyway has joined what it can. */
  final int[] lacking;

  /** Joints of each net that twins make as they move. */
  final int[] byTwins;

  final int cost;

  Joints(Search way, int[] label) {
    this.way = way;
    this.label = label;
    pieces = pieces(way, label, -1, -1);
    for (int net = 0; net < way.linked.nets; net++) {
      piecesOf.add(new ArrayList<>());
    }
    var seen = new boolean[label.length];
    for (int strip : way.strips.used) {
      int root = pieces.find(strip);
      if (way.label[strip] >= 0 && !seen[root]) {
        seen[root] = true;
        piecesOf.get(label[strip]).add(strip);
      }
    }
    int[] end = way.layout.end();
    int broken = 0;
    for (int link = 0; link < way.layout.links(); link++) {
      if (cut(label, end[2 * link], end[2 * link + 1])) {
        cuts.add(link);
        broken += fixed(link) ? IMPOSSIBLE : 0;
      }
    }
    lacking = piecesOf.stream().mapToInt(of -> Math.max(0, of.size() - 1)).toArray();
    byTwins = byTwins();
    int joints = 0;
    for (int net = 0; net < lacking.length; net++) {
      lacking[net] -= byTwins[net];
      joints += lacking[net];
    }
    keeps = new int[cuts.size()];
    Arrays.fill(keeps, -1);
    joints -= match();
    cost = way.moved() + cuts.size() + joints + broken;
  }

  static boolean cut(int[] label, int from, int to) {
    return from >= 0 && to >= 0 && label[from] >= 0 && label[to] >= 0 && label[from] != label[to];
  }

  /**
   * Strips as good links and twins that stay join them, one link or one pin left out (-1: none).
   */
  static DisjointSets pieces(Search way, int[] label, int withoutLink, int withoutPin) {
    var sets = new DisjointSets(label.length);
    int[] end = way.layout.end();
    for (int link = 0; link < way.layout.links(); link++) {
      int from = end[2 * link];
      int to = end[2 * link + 1];
      if (link != withoutLink && from >= 0 && to >= 0 && !cut(label, from, to)) {
        sets.union(from, to);
      }
    }
    for (int[] twins : way.wanted.terminals.pinsOf) {
      int first = -1;
      for (int pin : twins) {
        if (way.state[pin] == Search.STAYS && pin != withoutPin) {
          first = first < 0 ? way.layout.pin()[pin] : first;
          sets.union(first, way.layout.pin()[pin]);
        }
      }
    }
    return sets;
  }

  private boolean fixed(int link) {
    return way.layout.fixedEnd()[2 * link] || way.layout.fixedEnd()[2 * link + 1];
  }

  private int[] byTwins() {
    int[] joins = new int[lacking.length];
    for (int[] twins : way.wanted.terminals.pinsOf) {
      int stay = 0;
      int move = 0;
      for (int pin : twins) {
        stay += way.state[pin] == Search.STAYS ? 1 : 0;
        move += way.state[pin] == Search.MOVES ? 1 : 0;
      }
      if (twins.length > 1 && move > 0) {
        int net = way.want[twins[0]];
        joins[net] = Math.min(lacking[net], joins[net] + (stay > 0 ? move : move - 1));
      }
    }
    return joins;
  }

  /** Gives as many cut links as possible a net to join; returns how many, less them in lacking. */
  private int match() {
    int matched = 0;
    for (int i = 0; i < keeps.length; i++) {
      matched += augment(i, new boolean[lacking.length]) ? 1 : 0;
    }
    return matched;
  }

  private boolean augment(int cut, boolean[] seen) {
    for (int end = 0; end < 2; end++) {
      int net = netJoinedBy(cut, end);
      if (net < 0 || seen[net]) {
        continue;
      }
      seen[net] = true;
      if (lacking[net] > 0) {
        lacking[net]--;
        keeps[cut] = end;
        return true;
      }
      for (int other = 0; other < keeps.length; other++) {
        if (keeps[other] >= 0 && netJoinedBy(other, keeps[other]) == net) {
          int kept = keeps[other];
          keeps[other] = -1;
          if (augment(other, seen)) {
            keeps[cut] = end;
            return true;
          }
          keeps[other] = kept;
        }
      }
    }
    return false;
  }

  /** The net that a cut link could join if it keeps an end; -1 where that end hangs in the air. */
  private int netJoinedBy(int cut, int end) {
    int link = cuts.get(cut);
    int strip = way.layout.end()[2 * link + end];
    boolean held =
        piecesOf.get(label[strip]).stream().anyMatch(s -> pieces.find(s) == pieces.find(strip));
    return held && !fixed(link) ? label[strip] : -1;
  }

  /** Every strip of a piece, those without pins included. */
  Map<Integer, Integer> strips(int piece) {
    var strips = new LinkedHashMap<Integer, Integer>();
    for (int strip : way.strips.used) {
      if (pieces.find(strip) == pieces.find(piece)) {
        strips.put(strip, label[strip]);
      }
    }
    return strips;
  }
}
