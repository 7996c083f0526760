package org.holewise.school.store;

import java.util.List;

/**
 * What to order of one item, so that after the sessions that come the minimum is still there.
 *
 * @param need of the sessions that come, not packed yet
 */
record Order(Level level, int need) {

  public int packs() {
    int lacking = need + level.item().minimum() - level.inStore();
    int pack = level.item().pack();
    return Math.max(0, (lacking + pack - 1) / pack);
  }

  public int quantity() {
    return packs() * level.item().pack();
  }

  /** One for each item that lacks something. */
  static List<Order> of(List<Packing> packings, List<Level> levels) {
    return levels.stream()
        .map(level -> new Order(level, packings.stream().mapToInt(p -> p.left(level.item())).sum()))
        .filter(order -> order.packs() > 0)
        .toList();
  }
}
