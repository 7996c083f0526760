package org.holewise.school.store;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.holewise.school.account.Person;
import org.springframework.stereotype.Component;

/** The store of the model stage: stocked, a few things short, the first session's kits packed. */
@Component
public class StoreScene {

  private record Stock(String part, String label, String drawer, int minimum, int pack, int there) {

    Item item() {
      return new Item(
          0, label, part.isEmpty() ? Optional.empty() : PartKey.read(part), drawer, minimum, pack);
    }
  }

  private static final List<Stock> STOCK =
      List.of(
          new Stock("resistor 150", "Resistor 150 Ω", "A1", 40, 100, 180),
          new Stock("resistor 270", "Resistor 270 Ω", "A1", 40, 100, 95),
          new Stock("resistor 1k", "Resistor 1 kΩ", "A2", 60, 100, 240),
          new Stock("resistor 2k2", "Resistor 2.2 kΩ", "A2", 40, 100, 22),
          new Stock("resistor 4k7", "Resistor 4.7 kΩ", "A3", 40, 100, 130),
          new Stock("resistor 10k", "Resistor 10 kΩ", "A3", 60, 100, 210),
          new Stock("led red", "Lamp, red, 5 mm", "B1", 30, 50, 84),
          new Stock("led blue", "Lamp, blue, 5 mm", "B1", 30, 50, 31),
          new Stock("npn", "NPN transistor, small signal", "B3", 30, 25, 58),
          new Stock("switch", "Slide switch, one pole", "C1", 20, 10, 36),
          new Stock("button", "Push button, four leads", "C1", 20, 10, 0),
          new Stock("battery 6", "Battery box, 4 cells", "D1", 16, 4, 24),
          new Stock("battery 9", "Battery 9 V with clip", "D1", 20, 10, 17),
          new Stock("supply", "Bench supply", "Shelf 2", 15, 1, 16),
          new Stock("board 830-split", "Breadboard, long", "Shelf 1", 15, 5, 34),
          new Stock("meter hand-2000", "Multimeter with leads", "Shelf 1", 15, 1, 32),
          new Stock("", "Link wire, mixed colours", "E1", 10, 5, 12));

  private final Items items;
  private final Packings packings;
  private final Ledger ledger;
  private final Clock clock;

  StoreScene(Items items, Packings packings, Ledger ledger, Clock clock) {
    this.items = items;
    this.packings = packings;
    this.ledger = ledger;
    this.clock = clock;
  }

  /** Stocks an empty store, after sessions have been planned; leaves any other as it is. */
  public void lay(Person technician) {
    if (!items.all().isEmpty()) {
      return;
    }
    STOCK.forEach(stock -> deliver(technician, items.add(technician, stock.item()), stock.there()));
    packings.inFortnightFrom(LocalDate.now(clock)).stream()
        .limit(1)
        .forEach(packing -> pack(technician, packing));
  }

  private void deliver(Person technician, Item item, int quantity) {
    if (quantity > 0) {
      var line = Slip.Line.of(item.id(), Act.DELIVERED, quantity);
      ledger.write(technician, slip("delivery-" + item.id(), Optional.empty(), Stream.of(line)));
    }
  }

  // As much of the first kits as there is.
  private void pack(Person technician, Packing packing) {
    long session = packing.kit().session().id();
    var lines =
        items.all().stream().map(level -> line(level, packing)).filter(line -> line.quantity() > 0);
    ledger.write(technician, slip("kits-" + session, Optional.of(session), lines));
  }

  private static Slip.Line line(Level level, Packing packing) {
    int quantity = Math.min(packing.left(level.item()), level.inStore());
    return Slip.Line.of(level.item().id(), Act.PACKED, quantity);
  }

  private static Slip slip(String name, Optional<Long> session, Stream<Slip.Line> lines) {
    return new Slip("scene-" + name, session, "", lines.toList());
  }
}
