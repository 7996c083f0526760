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
          new Stock("resistor 330", "Resistor 330 Ω", "A1", 40, 100, 120),
          new Stock("resistor 470", "Resistor 470 Ω", "A1", 40, 100, 66),
          new Stock("resistor 1k", "Resistor 1 kΩ", "A2", 60, 100, 240),
          new Stock("resistor 2k2", "Resistor 2.2 kΩ", "A2", 40, 100, 22),
          new Stock("resistor 4k7", "Resistor 4.7 kΩ", "A3", 40, 100, 130),
          new Stock("resistor 10k", "Resistor 10 kΩ", "A3", 60, 100, 210),
          new Stock("resistor 10k 1%", "Resistor 10 kΩ, 1 %", "A3", 30, 50, 74),
          new Stock("resistor 22k", "Resistor 22 kΩ", "A4", 40, 100, 88),
          new Stock("resistor 47k", "Resistor 47 kΩ", "A4", 40, 100, 105),
          new Stock("resistor 68k", "Resistor 68 kΩ", "A4", 20, 100, 90),
          new Stock("resistor 100k", "Resistor 100 kΩ", "A4", 40, 100, 140),
          new Stock("potentiometer 10k", "Trimmer 10 kΩ", "A5", 15, 10, 19),
          new Stock("photoresistor 2k2", "Photoresistor", "A5", 15, 10, 21),
          new Stock("thermistor 10k 5%", "Thermistor 10 kΩ", "A5", 15, 10, 6),
          new Stock("led red", "Lamp, red, 5 mm", "B1", 30, 50, 84),
          new Stock("led green", "Lamp, green, 5 mm", "B1", 30, 50, 47),
          new Stock("led blue", "Lamp, blue, 5 mm", "B1", 30, 50, 31),
          new Stock("zener 5.1", "Zener diode 5.1 V", "B2", 15, 25, 33),
          new Stock("npn", "NPN transistor, small signal", "B3", 30, 25, 58),
          new Stock("nmos 2N7000", "MOSFET, n channel", "B3", 15, 25, 24),
          new Stock("dual-opamp TL072", "Op-amp, two in eight pins", "B4", 15, 10, 12),
          new Stock("555", "Timer chip", "B4", 15, 10, 18),
          new Stock("74393", "Counter chip, twice four bits", "B4", 15, 10, 16),
          new Stock("capacitor 4.7n", "Film capacitor 4.7 nF", "B5", 20, 50, 41),
          new Stock("capacitor 10n", "Film capacitor 10 nF", "B5", 40, 50, 77),
          new Stock("capacitor 100n", "Ceramic capacitor 100 nF", "B5", 40, 100, 130),
          new Stock("electrolytic 1u 25V", "Electrolytic 1 µF, 25 V", "B6", 20, 50, 38),
          new Stock("electrolytic 10u 25V", "Electrolytic 10 µF, 25 V", "B6", 30, 50, 52),
          new Stock("switch", "Slide switch, one pole", "C1", 20, 10, 46),
          new Stock("changeover", "Slide switch, changeover", "C1", 15, 10, 27),
          new Stock("button", "Push button, four leads", "C1", 20, 10, 0),
          new Stock("battery 6", "Battery box, 4 cells", "D1", 16, 4, 38),
          new Stock("battery 9", "Battery 9 V with clip", "D1", 20, 10, 17),
          new Stock("supply", "Bench supply", "Shelf 2", 15, 1, 24),
          new Stock("supply 2 outputs", "Bench supply, two outputs", "Shelf 2", 8, 1, 9),
          new Stock("generator", "Function generator", "Shelf 3", 8, 1, 16),
          new Stock("board 830-split", "Breadboard, long", "Shelf 1", 15, 5, 84),
          new Stock("meter hand-2000", "Multimeter with leads", "Shelf 1", 15, 1, 82),
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
