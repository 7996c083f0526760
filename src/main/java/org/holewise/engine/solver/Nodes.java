package org.holewise.engine.solver;

import java.util.Arrays;

/**
 * Which spots are one node, and the rule for what is not connected: a node with a net on it that no
 * DC path joins to the reference gets 1 GΩ to it, or to the top of the supply where that is asked
 * for to see what hangs on it. Joins make nodes; resistances, sources and the terminals of devices
 * are DC paths.
 */
final class Nodes {
  /** From a floating net to the reference (S); the project's law. */
  static final double FLOATING = 1e-9;

  /** A node whose voltage is zero without solving: the reference, or touched by nothing. */
  static final int NONE = -1;

  final int count;

  /** How many resistances there are without the 1 GΩ of floating nets, which come last. */
  final int resistances;

  private final Groups metal;
  private final Groups paths;

  /** Paths without what inputs of logic draw, which drives no wire. */
  private final Groups driven;

  private final int reference;
  private final boolean[] touched;
  private final int[] node;

  Nodes(Circuit circuit, Spots spots, Elements elements) {
    metal = new Groups(spots.count);
    elements.joins.forEach(join -> metal.join(join.a(), join.b()));
    reference = metal.of(circuit.plan.reference());
    paths = new Groups(spots.count);
    driven = new Groups(spots.count);
    touched = new boolean[spots.count];
    connect(elements);
    node = new int[spots.count];
    count = number(spots, elements);
    resistances = elements.resistances.size();
    shunt(circuit, spots, elements);
  }

  private void connect(Elements elements) {
    elements.resistances.forEach(r -> connect(r.a(), r.b()));
    elements.sources.forEach(s -> connect(s.plus, s.minus));
    elements.laws.forEach(this::connect);
    for (Elements.Capacitance c : elements.capacitances) {
      touched[metal.of(c.a())] = true;
      touched[metal.of(c.b())] = true;
    }
    for (Elements.Feed feed : elements.feeds) {
      touched[metal.of(feed.into())] = true;
      touched[metal.of(feed.from())] = true;
    }
  }

  /** Terminals that draw nothing are touched, and no path. */
  private void connect(Elements.Law law) {
    int first = NONE;
    for (int t = 0; t < law.spots.length; t++) {
      touched[metal.of(law.spots[t])] = true;
      if (law.device.draws(t)) {
        first = first == NONE ? law.spots[t] : first;
        connect(law.spots[t], first, law.device.drives());
      }
    }
  }

  private void connect(int a, int b) {
    connect(a, b, true);
  }

  private void connect(int a, int b, boolean drives) {
    touched[metal.of(a)] = true;
    touched[metal.of(b)] = true;
    paths.join(metal.of(a), metal.of(b));
    if (drives) {
      driven.join(metal.of(a), metal.of(b));
    }
  }

  /** Numbers the nodes in the order in which the elements come, which no list of nets changes. */
  private int number(Spots spots, Elements elements) {
    Arrays.fill(node, NONE);
    int next = 0;
    int[] roots = new int[spots.count];
    Arrays.fill(roots, NONE);
    for (Elements.Resistance r : elements.resistances) {
      next = number(r.a(), roots, next);
      next = number(r.b(), roots, next);
    }
    for (Elements.Source s : elements.sources) {
      next = number(s.plus, roots, next);
      next = number(s.minus, roots, next);
    }
    for (Elements.Law law : elements.laws) {
      for (int spot : law.spots) {
        next = number(spot, roots, next);
      }
    }
    for (Elements.Capacitance c : elements.capacitances) {
      next = number(c.a(), roots, next);
      next = number(c.b(), roots, next);
    }
    for (Elements.Feed feed : elements.feeds) {
      next = number(feed.into(), roots, next);
      next = number(feed.from(), roots, next);
    }
    for (int spot = 0; spot < spots.count; spot++) {
      node[spot] = roots[metal.of(spot)];
    }
    return next;
  }

  private int number(int spot, int[] roots, int next) {
    int root = metal.of(spot);
    if (root == reference || roots[root] != NONE) {
      return next;
    }
    roots[root] = next;
    return next + 1;
  }

  /** In the order of the nodes, so that the order of the nets makes no difference. */
  private void shunt(Circuit circuit, Spots spots, Elements elements) {
    int[] net = new int[count];
    Arrays.fill(net, NONE);
    for (int spot = 0; spot < spots.count; spot++) {
      if (spots.isNet(spot) && node[spot] >= 0 && floating(spot)) {
        net[node[spot]] = metal.of(spot);
      }
    }
    int far = circuit.drives.doubt() ? summit(circuit, spots) : reference;
    for (int root : net) {
      if (root >= 0) {
        elements.resistances.add(new Elements.Resistance(root, far, FLOATING, -1));
      }
    }
  }

  /** Gives elements that differ in values alone the same 1 GΩ of floating nets. */
  void complete(Elements revalued, Elements own) {
    revalued.resistances.addAll(own.resistances.subList(resistances, own.resistances.size()));
  }

  /** The top of the supply; the reference where it is not connected itself. */
  private int summit(Circuit circuit, Spots spots) {
    int top = circuit.plan.summit().map(pin -> spots.pin(circuit.plan.pin(pin))).orElse(NONE);
    return floating(top) ? reference : metal.of(top);
  }

  /** Number of a spot's node, {@link #NONE} where its voltage is zero without solving. */
  int at(int spot) {
    return spot < 0 ? NONE : node[spot];
  }

  /** The spot that stands for a spot's metal. */
  int metal(int spot) {
    return metal.of(spot);
  }

  /** Whether no DC path leads from a spot to the reference. */
  boolean floating(int spot) {
    return spot < 0 || paths.of(metal.of(spot)) != paths.of(reference);
  }

  /** Whether a DC path beside what inputs of logic draw leads from a spot to another. */
  boolean driven(int spot, int other) {
    return driven.of(metal.of(spot)) == driven.of(metal.of(other));
  }

  /** Whether a spot is touched by nothing at all, so that only its 1 GΩ is there. */
  boolean alone(int spot) {
    return spot < 0 || !touched[metal.of(spot)] && metal.of(spot) != reference;
  }

  /** The group of DC paths that a spot belongs to. */
  int component(int spot) {
    return paths.of(metal.of(spot));
  }
}
