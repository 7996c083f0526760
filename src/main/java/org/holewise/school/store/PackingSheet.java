package org.holewise.school.store;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A session's packing as its page shows it.
 *
 * @param rows what the exercise needs and the store keeps, then what else was packed
 * @param out what is with the class now
 * @param unlisted what the exercise needs and the store's list has not
 * @param others items that may be packed besides
 */
record PackingSheet(
    Packing packing, List<Row> rows, List<Row> out, List<Kit.Need> unlisted, List<Item> others) {

  record Row(Level level, Use use, Optional<Kit.Need> need, int left) {

    public Item item() {
      return level.item();
    }

    public int lacking() {
      return Math.max(0, left - level.inStore());
    }
  }

  static PackingSheet of(Packing packing, List<Level> levels) {
    var kit = packing.kit();
    var needed = kit.needs().stream().flatMap(need -> being(need, levels).stream()).toList();
    var more =
        levels.stream()
            .filter(level -> !needed.contains(level))
            .filter(level -> packing.use(level.item()).packed() > 0)
            .toList();
    var rows =
        Stream.concat(needed.stream(), more.stream()).map(level -> row(level, packing)).toList();
    return new PackingSheet(
        packing,
        rows,
        levels.stream()
            .map(level -> row(level, packing))
            .filter(row -> row.use().out() > 0)
            .toList(),
        kit.needs().stream()
            .filter(need -> !need.part().equipment() && being(need, levels).isEmpty())
            .toList(),
        levels.stream()
            .map(Level::item)
            .filter(item -> rows.stream().noneMatch(row -> row.item().equals(item)))
            .toList());
  }

  private static Row row(Level level, Packing packing) {
    var item = level.item();
    return new Row(
        level, packing.use(item), item.part().flatMap(packing.kit()::need), packing.left(item));
  }

  private static Optional<Level> being(Kit.Need need, List<Level> levels) {
    return levels.stream()
        .filter(level -> level.item().part().equals(Optional.of(need.part())))
        .findFirst();
  }
}
