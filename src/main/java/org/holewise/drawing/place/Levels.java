package org.holewise.drawing.place;

import java.util.Arrays;

/**
 * Heights that keep distances: the least solution of y[to] ≥ y[from] + distance for all that was
 * asked, by Bellman and Ford's longest paths (1958, Quarterly of Applied Mathematics 16). What
 * contradicts earlier wishes is refused. Not thread-safe.
 */
final class Levels {
  private int[] from = new int[64];
  private int[] to = new int[64];
  private int[] distance = new int[64];
  private int edges;
  private int[] y;

  Levels(int size) {
    this.y = new int[size];
  }

  int of(int variable) {
    return y[variable];
  }

  /** Asks for y[b] ≥ y[a] + d; false where that cannot be. */
  boolean under(int a, int b, int d) {
    add(a, b, d);
    return settle(1);
  }

  /** Asks for y[b] = y[a] + d; false where that cannot be. */
  boolean level(int a, int b, int d) {
    add(a, b, d);
    add(b, a, -d);
    return settle(2);
  }

  private void add(int a, int b, int d) {
    if (edges == from.length) {
      from = Arrays.copyOf(from, 2 * edges);
      to = Arrays.copyOf(to, 2 * edges);
      distance = Arrays.copyOf(distance, 2 * edges);
    }
    from[edges] = a;
    to[edges] = b;
    distance[edges] = d;
    edges++;
  }

  /** Raises what must be raised; takes the last wishes back where that finds no end. */
  private boolean settle(int last) {
    int[] before = y.clone();
    for (int round = 0; round <= y.length; round++) {
      if (!raise()) {
        return true;
      }
    }
    y = before;
    edges -= last;
    return false;
  }

  private boolean raise() {
    boolean raised = false;
    for (int i = 0; i < edges; i++) {
      int need = y[from[i]] + distance[i];
      if (y[to[i]] < need) {
        if (to[i] == 0) {
          return true;
        }
        y[to[i]] = need;
        raised = true;
      }
    }
    return raised;
  }
}
