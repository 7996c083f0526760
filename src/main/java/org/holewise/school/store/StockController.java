package org.holewise.school.store;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The stock: what there is, what runs out first. */
@Controller
class StockController {

  private final Items items;

  StockController(Items items) {
    this.items = items;
  }

  @GetMapping("/store")
  String list(
      @RequestParam(defaultValue = "") String name,
      @RequestParam(defaultValue = "false") boolean low,
      Model model) {
    var all = items.all();
    model.addAttribute("levels", found(all, name, low));
    model.addAttribute("items", all.size());
    model.addAttribute("short", all.stream().filter(StockController::isShort).count());
    model.addAttribute("name", name);
    model.addAttribute("low", low);
    return "store/stock";
  }

  private static List<Level> found(List<Level> all, String name, boolean low) {
    return all.stream()
        .filter(level -> !low || isShort(level))
        .filter(level -> has(level.item(), name))
        .sorted(Comparator.comparing(Level::state))
        .toList();
  }

  private static boolean isShort(Level level) {
    return level.state() != Level.State.ENOUGH;
  }

  private static boolean has(Item item, String name) {
    String wanted = name.strip().toLowerCase(Locale.ROOT);
    return Stream.of(item.label(), item.drawer(), item.part().map(PartKey::text).orElse(""))
        .anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(wanted));
  }
}
