package org.holewise.engine.solver;

import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Whether more current is fed into some part of a circuit than comes out of it: feeds whose sum
 * into a group of DC paths is not zero. The 1 GΩ of floating nets is no such path.
 */
final class CutSets {
  private CutSets() {}

  /** The ends of feeds that nothing can take, by the spots that stand for them. */
  static TreeSet<Integer> refused(Nodes nodes, Elements elements) {
    Map<Integer, Double> sums = new TreeMap<>();
    for (Elements.Feed feed : elements.feeds) {
      sums.merge(nodes.component(feed.into()), feed.amps(), Double::sum);
      sums.merge(nodes.component(feed.from()), -feed.amps(), Double::sum);
    }
    var ends = new TreeSet<Integer>();
    for (Elements.Feed feed : elements.feeds) {
      for (int end : new int[] {feed.into(), feed.from()}) {
        if (Math.abs(sums.getOrDefault(nodes.component(end), 0.0)) > 0) {
          ends.add(nodes.metal(end));
        }
      }
    }
    return ends;
  }
}
