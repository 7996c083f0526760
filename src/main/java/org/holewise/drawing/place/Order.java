package org.holewise.drawing.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The order of items from left to right: by the signal's way first, then each moved to wherever it
 * makes wires shorter and cross less, until nothing more is won. Rounds are bounded.
 */
final class Order {
  private static final int ROUNDS = 4;

  private final List<Item> items;
  private final int nets;
  private final int[] low;
  private final int[] high;
  private final int[] y;
  private final int[] count;

  Order(List<Item> items, int nets) {
    this.items = new ArrayList<>(items);
    this.items.sort(Comparator.comparingDouble(item -> item.key));
    this.nets = nets;
    this.low = new int[nets];
    this.high = new int[nets];
    this.y = new int[nets];
    this.count = new int[nets];
  }

  List<Item> byFlow() {
    return List.copyOf(items);
  }

  List<Item> improved() {
    var order = new ArrayList<>(items);
    double cost = cost(order);
    boolean won = true;
    for (int round = 0; won && round < ROUNDS; round++) {
      won = false;
      for (Item item : levelFirst()) {
        int at = order.indexOf(item);
        int best = at;
        for (int to = 0; to < order.size(); to++) {
          move(order, item, to);
          double now = cost(order);
          if (now < cost - 1e-9) {
            cost = now;
            best = to;
            won = true;
          }
        }
        move(order, item, best);
      }
    }
    return List.copyOf(order);
  }

  private List<Item> levelFirst() {
    var sorted = new ArrayList<>(items);
    sorted.sort(Comparator.comparing(item -> item.elements.get(0).lies(Element.Lie.LEVEL) ? 0 : 1));
    return sorted;
  }

  private static void move(List<Item> order, Item item, int to) {
    order.remove(item);
    order.add(to, item);
  }

  private double cost(List<Item> order) {
    extents(order);
    double cost = 0;
    for (int net = 0; net < nets; net++) {
      if (count[net] > 0) {
        cost += 8.0 * (high[net] - low[net]);
        int at = y[net] / count[net];
        for (int i = low[net] + 1; i < high[net]; i++) {
          if (!order.get(i).touches(net)) {
            cost += order.get(i).passing(at);
          }
        }
      }
    }
    for (int i = 0; i < order.size(); i++) {
      cost += sides(order, i);
      for (int j = i + 1; j < order.size(); j++) {
        cost += 5 * Math.max(0, order.get(i).key - order.get(j).key);
      }
    }
    return cost;
  }

  private void extents(List<Item> order) {
    Arrays.fill(count, 0);
    Arrays.fill(y, 0);
    for (int i = 0; i < order.size(); i++) {
      for (Item.Tap tap : order.get(i).taps) {
        int net = tap.net();
        if (count[net] == 0) {
          low[net] = i;
        }
        high[net] = i;
        y[net] += tap.y();
        count[net]++;
      }
    }
  }

  /** Taps that face away from what they are joined to; a transistor can be turned. */
  private double sides(List<Item> order, int at) {
    double cost = 0;
    for (Item.Tap tap : order.get(at).taps) {
      boolean left = low[tap.net()] < at;
      boolean right = high[tap.net()] > at;
      boolean away = tap.side() < 0 ? right : tap.side() > 0 && left;
      boolean all = away && (tap.side() < 0 ? !left : !right);
      boolean turns = order.get(at).elements.get(0).lies(Element.Lie.UPRIGHT);
      cost += all ? turns ? 6 : 40 : away ? 12 : 0;
    }
    return cost;
  }
}
