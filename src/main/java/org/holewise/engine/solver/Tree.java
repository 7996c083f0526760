package org.holewise.engine.solver;

import java.util.Arrays;

/**
 * A tree that spans the nodes from the reference, and with it a choice of unknowns: the voltage of
 * every node over its parent, and Kirchhoff's current law for everything beyond that edge.
 * Immutable.
 *
 * <p>In the star every parent is the reference, which is plain nodal analysis. The strongest tree
 * takes the largest conductances (Prim 1957, Bell System Technical Journal 36): then each equation
 * is led by its own edge, whatever else conducts, and an island that hangs on a reversed lamp by
 * 1e-18 S is found as exactly as one on a wire. It is the cut-set analysis of the textbooks (Desoer
 * and Kuh 1969, Basic Circuit Theory, chapter 11).
 */
final class Tree {
  /** The reference as a node. */
  static final int ROOT = -1;

  private final int[] parent;
  private final int[] depth;

  /** The nodes, each after its parent. */
  private final int[] order;

  private Tree(int[] parent, int[] depth, int[] order) {
    this.parent = parent;
    this.depth = depth;
    this.order = order;
  }

  static Tree star(int nodes) {
    int[] parent = new int[nodes];
    int[] order = new int[nodes];
    Arrays.fill(parent, ROOT);
    Arrays.setAll(order, k -> k);
    return new Tree(parent, new int[nodes], order);
  }

  /**
   * The tree of largest weights.
   *
   * @param weights between nodes, the last row and column the reference; n + 1 by n + 1, symmetric
   */
  static Tree strongest(double[][] weights) {
    int n = weights.length - 1;
    int[] parent = new int[n];
    int[] depth = new int[n];
    int[] order = new int[n];
    double[] best = Arrays.copyOf(weights[n], n);
    Arrays.fill(parent, ROOT);
    boolean[] in = new boolean[n];
    for (int done = 0; done < n; done++) {
      int next = strongest(best, in);
      in[next] = true;
      order[done] = next;
      depth[next] = parent[next] == ROOT ? 0 : depth[parent[next]] + 1;
      for (int k = 0; k < n; k++) {
        if (!in[k] && weights[next][k] > best[k]) {
          best[k] = weights[next][k];
          parent[k] = next;
        }
      }
    }
    return new Tree(parent, depth, order);
  }

  private static int strongest(double[] best, boolean[] in) {
    int found = -1;
    for (int k = 0; k < best.length; k++) {
      if (!in[k] && (found < 0 || best[k] > best[found])) {
        found = k;
      }
    }
    return found;
  }

  /**
   * The edges between two nodes: k + 1 for the edge of node k upwards, −(k + 1) downwards, so that
   * the voltage of a over b is the sum of the edges' with these signs.
   */
  int[] path(int a, int b) {
    int[] path = new int[span(a, b)];
    int up = a;
    int down = b;
    int length = 0;
    while (up != down) {
      if (depth(up) >= depth(down)) {
        path[length++] = up + 1;
        up = parent[up];
      } else {
        path[length++] = -(down + 1);
        down = parent[down];
      }
    }
    return path;
  }

  private int span(int a, int b) {
    int up = a;
    int down = b;
    int length = 0;
    while (up != down) {
      if (depth(up) >= depth(down)) {
        up = parent[up];
      } else {
        down = parent[down];
      }
      length++;
    }
    return length;
  }

  private int depth(int node) {
    return node == ROOT ? -1 : depth[node];
  }

  /**
   * Turns what every edge adds into what every node has: the first entries of an array, in place.
   */
  void sum(double[] edges) {
    for (int node : order) {
      if (parent[node] != ROOT) {
        edges[node] += edges[parent[node]];
      }
    }
  }

  /**
   * The transpose of {@link #sum}: turns what hangs on nodes into what hangs on edges, in place.
   */
  void gather(double[] nodes) {
    for (int k = order.length - 1; k >= 0; k--) {
      int node = order[k];
      if (parent[node] != ROOT) {
        nodes[parent[node]] += nodes[node];
      }
    }
  }
}
