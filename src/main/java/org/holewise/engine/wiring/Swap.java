package org.holewise.engine.wiring;

import java.util.ArrayDeque;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A symmetry of the schematic that exchanges two places and whatever hangs on them: two equal
 * branches, say. While nothing of it is taken yet, a search need try only one of the two places:
 * the other gives the same repairs under other names.
 *
 * @param nets wanted nets that change
 * @param places places that change
 */
record Swap(int[] nets, int[] places) {

  /**
   * The symmetry that exchanges two places pin by pin, if following it from net to net finds one.
   */
  static Optional<Swap> of(Terminals t, int[] classOf, List<Chain> chains, int one, int other) {
    var follow = new Follow(t, classOf);
    if (!follow.exchange(one, other) || !follow.holds() || !follow.keeps(chains)) {
      return Optional.empty();
    }
    return Optional.of(new Swap(changed(follow.net), changed(follow.place)));
  }

  private static int[] changed(int[] image) {
    return IntStream.range(0, image.length).filter(i -> image[i] != i).toArray();
  }

  /** Images of nets and places, each its own until a step of the walk changes it. */
  private record Follow(
      Terminals t, int[] classOf, int[] net, int[] place, ArrayDeque<int[]> open) {
    Follow(Terminals t, int[] classOf) {
      this(
          t,
          classOf,
          IntStream.range(0, t.size.length).toArray(),
          IntStream.range(0, classOf.length).toArray(),
          new ArrayDeque<>());
    }

    boolean exchange(int one, int other) {
      open.add(new int[] {one, other});
      while (!open.isEmpty()) {
        int[] pair = open.remove();
        if (place[pair[0]] == pair[1]) {
          continue;
        }
        if (place[pair[0]] != pair[0] || place[pair[1]] != pair[1]) {
          return false;
        }
        place[pair[0]] = pair[1];
        place[pair[1]] = pair[0];
        for (int pin = 0; pin < pins(pair[0]); pin++) {
          if (!exchangeNets(net(pair[0], pin), net(pair[1], pin))) {
            return false;
          }
        }
      }
      return true;
    }

    private boolean exchangeNets(int a, int b) {
      if (a == b || net[a] == b) {
        return net[a] == b;
      }
      if (net[a] != a || net[b] != b) {
        return false;
      }
      net[a] = b;
      net[b] = a;
      for (int u = 0; u < place.length; u++) {
        int v = touches(u, a) && place[u] == u ? partner(u, a, b) : u;
        if (v < 0) {
          return false;
        }
        if (v != u) {
          open.add(new int[] {u, v});
        }
      }
      return true;
    }

    private int partner(int u, int a, int b) {
      for (int v = 0; v < place.length; v++) {
        if (v != u && place[v] == v && classOf[v] == classOf[u] && alike(u, a, v, b) && !waits(v)) {
          return v;
        }
      }
      return -1;
    }

    private boolean waits(int v) {
      return open.stream().anyMatch(pair -> pair[0] == v || pair[1] == v);
    }

    private boolean alike(int u, int a, int v, int b) {
      return IntStream.range(0, pins(u)).allMatch(pin -> (net(u, pin) == a) == (net(v, pin) == b));
    }

    private boolean touches(int u, int a) {
      return IntStream.range(0, pins(u)).anyMatch(pin -> net(u, pin) == a);
    }

    boolean holds() {
      return IntStream.range(0, place.length)
          .allMatch(
              u ->
                  classOf[place[u]] == classOf[u]
                      && IntStream.range(0, pins(u))
                          .allMatch(pin -> net(place[u], pin) == net[net(u, pin)]));
    }

    /** Whether each chain stays whole or goes as a whole. */
    boolean keeps(List<Chain> chains) {
      return chains.stream()
          .allMatch(
              chain ->
                  chain.places().stream().allMatch(u -> place[u] == u)
                      || chain.places().stream().allMatch(u -> place[u] != u));
    }

    private int pins(int part) {
      return t.firstPin[part + 1] - t.firstPin[part];
    }

    private int net(int part, int pin) {
      return t.net[t.firstPin[part] + pin];
    }
  }
}
