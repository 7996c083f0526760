package org.holewise.engine.solver;

import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Whether a current is fed in where nothing can take it: more into a group of DC paths than comes
 * out of it, or against junctions that let it pass the other way only. The 1 GΩ of floating nets is
 * no such path, and neither is what a junction leaks.
 */
final class CutSets {
  private final Nodes nodes;
  private final Elements elements;

  CutSets(Nodes nodes, Elements elements) {
    this.nodes = nodes;
    this.elements = elements;
  }

  /** The ends of feeds that nothing can take, by the spots that stand for them. */
  TreeSet<Integer> refused() {
    var ends = new TreeSet<Integer>();
    Map<Integer, Double> sums = sums();
    for (Elements.Feed feed : elements.feeds) {
      if (feed.amps() != 0 && (stuck(feed, sums) || !passes(feed))) {
        ends.add(nodes.metal(feed.into()));
        ends.add(nodes.metal(feed.from()));
      }
    }
    return ends;
  }

  /** Every feed's ends; what to name where a search shows that the feeds cannot be taken. */
  TreeSet<Integer> all() {
    var ends = new TreeSet<Integer>();
    for (Elements.Feed feed : elements.feeds) {
      ends.add(nodes.metal(feed.into()));
      ends.add(nodes.metal(feed.from()));
    }
    return ends;
  }

  private Map<Integer, Double> sums() {
    Map<Integer, Double> sums = new TreeMap<>();
    for (Elements.Feed feed : elements.feeds) {
      sums.merge(nodes.component(feed.into()), feed.amps(), Double::sum);
      sums.merge(nodes.component(feed.from()), -feed.amps(), Double::sum);
    }
    return sums;
  }

  private boolean stuck(Elements.Feed feed, Map<Integer, Double> sums) {
    return sums.getOrDefault(nodes.component(feed.into()), 0.0) != 0
        || sums.getOrDefault(nodes.component(feed.from()), 0.0) != 0;
  }

  /** Whether some way leads from where the current goes in to where it comes out. */
  private boolean passes(Elements.Feed feed) {
    int from = nodes.metal(feed.amps() > 0 ? feed.into() : feed.from());
    int to = nodes.metal(feed.amps() > 0 ? feed.from() : feed.into());
    if (nodes.component(from) != nodes.component(to)) {
      return true;
    }
    var reached = new TreeSet<Integer>();
    reached.add(from);
    int before = 0;
    while (reached.size() > before && !reached.contains(to)) {
      before = reached.size();
      spread(reached);
    }
    return reached.contains(to);
  }

  private void spread(TreeSet<Integer> reached) {
    elements.resistances.subList(0, nodes.resistances).forEach(r -> both(reached, r.a(), r.b()));
    elements.sources.forEach(s -> both(reached, s.plus, s.minus));
    for (Elements.Law law : elements.laws) {
      for (int in = 0; in < law.spots.length; in++) {
        for (int out = 0; out < law.spots.length; out++) {
          if (in != out && law.device.carries(in, out)) {
            one(reached, law.spots[in], law.spots[out]);
          }
        }
      }
    }
  }

  private void both(TreeSet<Integer> reached, int a, int b) {
    one(reached, a, b);
    one(reached, b, a);
  }

  private void one(TreeSet<Integer> reached, int in, int out) {
    if (reached.contains(nodes.metal(in))) {
      reached.add(nodes.metal(out));
    }
  }
}
