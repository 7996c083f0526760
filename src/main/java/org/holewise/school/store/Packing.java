package org.holewise.school.store;

import java.util.List;

/** A kit and what was moved for it so far. */
record Packing(Kit kit, List<Use> uses) {

  Use use(Item item) {
    return uses.stream()
        .filter(use -> use.item() == item.id())
        .findFirst()
        .orElse(Use.none(kit.session().id(), item.id()));
  }

  /** What is needed of an item; nothing where the exercise has no such part. */
  int need(Item item) {
    return item.part().flatMap(kit::need).map(Kit.Need::total).orElse(0);
  }

  /** What is needed of an item and not packed yet. */
  int left(Item item) {
    return Math.max(0, need(item) - use(item).packed());
  }
}
