package org.holewise.school.store;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.holewise.school.csv.Csv;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** What to order, so that the sessions of the next fourteen days leave the minimum. */
@Controller
@RequestMapping("/store")
class OrdersController {

  private static final int LAST_DAY = 13;

  private static final List<String> COLUMNS =
      List.of("item", "part", "drawer", "inStore", "minimum", "need", "pack", "packs", "order");

  private final Packings packings;
  private final Items items;
  private final Texts texts;
  private final Clock clock;

  OrdersController(Packings packings, Items items, Texts texts, Clock clock) {
    this.packings = packings;
    this.items = items;
    this.texts = texts;
    this.clock = clock;
  }

  @GetMapping("/orders")
  String list(Model model) {
    var today = LocalDate.now(clock);
    var coming = packings.inFortnightFrom(today);
    var levels = items.all();
    model.addAttribute("orders", Order.of(coming, levels));
    model.addAttribute("unlisted", texts.unlisted(Demand.of(coming, levels)));
    model.addAttribute("sessions", coming.size());
    model.addAttribute("from", today);
    model.addAttribute("to", today.plusDays(LAST_DAY));
    return "store/orders";
  }

  @GetMapping("/orders.csv")
  ResponseEntity<byte[]> file() {
    var today = LocalDate.now(clock);
    var orders = Order.of(packings.inFortnightFrom(today), items.all());
    var header = COLUMNS.stream().map(column -> texts.say("store.orders." + column)).toList();
    return new Csv(header, orders.stream().map(OrdersController::cells).toList())
        .file("orders-" + today + ".csv");
  }

  private static List<Object> cells(Order order) {
    var item = order.level().item();
    return List.of(
        item.label(),
        item.part().map(PartKey::text).orElse(""),
        item.drawer(),
        order.level().inStore(),
        item.minimum(),
        order.need(),
        item.pack(),
        order.packs(),
        order.quantity());
  }
}
