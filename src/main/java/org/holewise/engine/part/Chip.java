package org.holewise.engine.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Unit;

/** A chip of logic: its pins by number, its family, what it decides. */
interface Chip extends Kind {
  /** Resistor inside a bipolar input (Ω); DM74LS00, schematic. */
  double INPUT_OHMS = 20e3;

  /** By how much what a chip itself draws may differ from the typical. */
  double IDLE_SHARE = 0.6;

  Pinout pinout();

  /** Names of the pins that are inputs, and of those that are outputs, with blanks between. */
  String inputs();

  String outputs();

  ChipLogic logic(Family family);

  /** The family where none is given. */
  Family usual();

  /** What the chip draws by itself as a bipolar one (A), typical of its sheet. */
  double idle();

  @Override
  default List<Field> fields() {
    return List.of(
        new Field.Choice(
            "family",
            Family.ALL.stream().map(Family::name).toList(),
            Optional.of(usual().name()),
            "Family of logic: levels, drive and supply."),
        new Field.Text("type", "Maker's type number."),
        Field.Number.fallback(
            "idle",
            Unit.AMP,
            0,
            1,
            idle(),
            "What it draws by itself at 5 V where its family is bipolar."));
  }

  static Family family(Part part, Family usual) {
    return Family.named(part.fields().text("family").orElse(usual.name()));
  }

  @Override
  default List<String> pins(Fields fields) {
    return pinout().numbers();
  }

  @Override
  default List<Leg> legs(Fields fields) {
    return pinout().legs(inputs(), outputs());
  }

  @Override
  default Footprint footprint(Fields fields) {
    return new Footprint.Dip(pinout().names().size());
  }

  @Override
  default void connect(Part part, Network network) {
    Family family = family(part, usual());
    int plus = network.pin(pinout().plus());
    int minus = network.pin(pinout().minus());
    List<String> inputs = pinout().numbers(inputs());
    if (family.bipolar()) {
      Parameter ohms = Parameter.within(part.ref() + ".input", INPUT_OHMS, family.share());
      inputs.forEach(input -> network.device(new InputLoad(ohms), network.pin(input), plus, minus));
      if (part.number("idle") > 0) {
        network.resistor(
            plus,
            minus,
            Parameter.within(part.ref() + ".idle", family.at() / part.number("idle"), IDLE_SHARE));
      }
    }
    var outputs = new ArrayList<Driver>();
    for (String output : pinout().numbers(outputs())) {
      outputs.add(Drivers.of(part.ref(), family, network.pin(output)));
    }
    network.logic(
        logic(family),
        plus,
        minus,
        inputs.stream().mapToInt(network::pin).toArray(),
        outputs.toArray(Driver[]::new));
  }

  @Override
  default List<Limit> limits(Part part) {
    Family family = family(part, usual());
    var limits = new ArrayList<Limit>();
    limits.add(new Limit.Supply(pinout().plus(), pinout().minus(), family.maximum()));
    for (String output : pinout().numbers(outputs())) {
      limits.add(new Limit.Current(output, family.drive(), 2 * family.drive()));
    }
    return limits;
  }

  /** Images of all pins as maps. */
  default List<Map<String, String>> maps(List<List<String>> images) {
    List<String> pins = pinout().numbers();
    var maps = new ArrayList<Map<String, String>>();
    for (List<String> image : images) {
      var map = new LinkedHashMap<String, String>();
      for (int i = 0; i < pins.size(); i++) {
        map.put(pins.get(i), image.get(i));
      }
      maps.add(map);
    }
    return List.copyOf(maps);
  }
}
