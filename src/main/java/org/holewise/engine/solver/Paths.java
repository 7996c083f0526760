package org.holewise.engine.solver;

import java.util.Arrays;

/**
 * The edges of a tree that every element spans, so that its voltage is the signed sum of theirs:
 * resistances, sources, feeds, the terminals of every law to its last, every node to the reference.
 * Immutable.
 */
@SuppressWarnings("ArrayRecordComponent")
record Paths(
    Tree tree,
    int[][] resistances,
    int[][] sources,
    int[][] feeds,
    int[][][] laws,
    int[][] shunts) {

  Paths(Tree tree, Elements elements, Nodes nodes) {
    this(
        tree,
        new int[elements.resistances.size()][],
        new int[elements.sources.size()][],
        new int[elements.feeds.size()][],
        new int[elements.laws.size()][][],
        new int[nodes.count][]);
    for (int k = 0; k < resistances.length; k++) {
      Elements.Resistance r = elements.resistances.get(k);
      resistances[k] = tree.path(nodes.at(r.a()), nodes.at(r.b()));
    }
    for (int k = 0; k < sources.length; k++) {
      Elements.Source s = elements.sources.get(k);
      sources[k] = tree.path(nodes.at(s.plus), nodes.at(s.minus));
    }
    for (int k = 0; k < feeds.length; k++) {
      Elements.Feed f = elements.feeds.get(k);
      feeds[k] = tree.path(nodes.at(f.into()), nodes.at(f.from()));
    }
    for (int k = 0; k < laws.length; k++) {
      laws[k] = toLast(tree, elements.laws.get(k), nodes);
    }
    Arrays.setAll(shunts, k -> tree.path(k, Tree.ROOT));
  }

  private static int[][] toLast(Tree tree, Elements.Law law, Nodes nodes) {
    int last = law.spots.length - 1;
    int[][] paths = new int[last][];
    for (int t = 0; t < last; t++) {
      paths[t] = tree.path(nodes.at(law.spots[t]), nodes.at(law.spots[last]));
    }
    return paths;
  }
}
