package org.holewise.engine.solver;

/** Disjoint groups of numbers (union–find; Tarjan 1975, Journal of the ACM 22). */
final class Groups {
  private final int[] parent;

  Groups(int count) {
    parent = new int[count];
    for (int i = 0; i < count; i++) {
      parent[i] = i;
    }
  }

  int of(int i) {
    int root = i;
    while (parent[root] != root) {
      parent[root] = parent[parent[root]];
      root = parent[root];
    }
    return root;
  }

  /**
   * Puts two groups together; the lower number stands for both.
   *
   * @return whether they were apart
   */
  boolean join(int a, int b) {
    int one = of(a);
    int other = of(b);
    parent[Math.max(one, other)] = Math.min(one, other);
    return one != other;
  }
}
