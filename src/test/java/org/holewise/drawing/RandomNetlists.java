package org.holewise.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.holewise.drawing.circuit.Schematic;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * Netlists that nobody would build: 1 to 25 parts of any kind, most pins on some net, a battery or
 * not. The same seed gives the same netlist.
 */
final class RandomNetlists {
  private static final List<String> OFTEN =
      List.of("resistor", "resistor", "resistor", "capacitor", "led", "npn", "switch");
  private static final List<String> KINDS =
      List.of(
          "potentiometer",
          "photoresistor",
          "thermistor",
          "electrolytic",
          "inductor",
          "diode",
          "zener",
          "pnp",
          "nmos",
          "pmos",
          "dual-opamp",
          "comparator",
          "regulator",
          "button",
          "changeover",
          "generator",
          "7400",
          "7404",
          "7474",
          "4017",
          "seven-segment",
          "555");

  private RandomNetlists() {}

  static Schematic of(long seed) {
    var random = new Random(seed);
    var parts = new ArrayList<Part>();
    int size = 1 + random.nextInt(25);
    if (random.nextInt(5) > 0) {
      parts.add(FirstCourse.part("P1", random.nextInt(6) == 0 ? "supply2" : "battery"));
    }
    while (parts.size() < size) {
      List<String> from = random.nextInt(3) > 0 ? OFTEN : KINDS;
      parts.add(FirstCourse.part("X" + parts.size(), from.get(random.nextInt(from.size()))));
    }
    return new Schematic(parts, nets(parts, random), Map.of());
  }

  /** Pins in a few large nets and many small ones; some are left free. */
  private static List<Net> nets(List<Part> parts, Random random) {
    int count = 2 + random.nextInt(2 + 2 * parts.size());
    var pins = new ArrayList<List<Pin>>();
    for (int i = 0; i < count; i++) {
      pins.add(new ArrayList<>());
    }
    for (Part part : parts) {
      boolean chip = part.pins().size() > 7;
      for (Pin pin : part.pins()) {
        if (random.nextInt(chip ? 2 : 20) > 0) {
          boolean rail = random.nextInt(3) == 0;
          pins.get(rail ? random.nextInt(2) : random.nextInt(count)).add(pin);
        }
      }
    }
    var nets = new ArrayList<Net>();
    for (int i = 0; i < count; i++) {
      nets.add(new Net("n" + i, pins.get(i)));
    }
    return nets;
  }
}
