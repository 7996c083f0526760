package org.holewise.engine.netlist;

import java.util.Arrays;

/**
 * Union–find on the numbers 0 to n − 1, by size with path halving (Tarjan, <i>Data Structures and
 * Network Algorithms</i>, 1983, chapter 2). Not safe for use by several threads.
 */
public final class DisjointSets {
  private final int[] link;

  public DisjointSets(int n) {
    link = new int[n];
    Arrays.fill(link, -1);
  }

  /** The member that stands for a set; a root holds minus the size of its set. */
  public int find(int member) {
    int i = member;
    while (link[i] >= 0) {
      if (link[link[i]] >= 0) {
        link[i] = link[link[i]];
      }
      i = link[i];
    }
    return i;
  }

  /** Joins two sets; false where they were one already. */
  public boolean union(int one, int other) {
    int a = find(one);
    int b = find(other);
    if (a == b) {
      return false;
    }
    int greater = link[a] <= link[b] ? a : b;
    int smaller = a + b - greater;
    link[greater] += link[smaller];
    link[smaller] = greater;
    return true;
  }
}
