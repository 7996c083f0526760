package org.holewise.engine.netlist;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Pin;

/** The wanted nets. */
public final class Schematic {
  private Schematic() {}

  /**
   * The exercise's nets in their order, then a net for each pin that is on none of them, named
   * after the pin. Twins stay apart. A pin that was put on two nets is on the first of them.
   */
  public static Netlist netlist(Exercise exercise) {
    var nets = new ArrayList<BuiltNet>();
    var netOf = new LinkedHashMap<Pin, Integer>();
    for (Net net : exercise.nets()) {
      var pins = net.pins().stream().filter(pin -> !netOf.containsKey(pin)).distinct().toList();
      pins.forEach(pin -> netOf.put(pin, nets.size()));
      nets.add(new BuiltNet(net.name(), pins, List.of()));
    }
    for (Pin pin : exercise.pins()) {
      if (!netOf.containsKey(pin)) {
        netOf.put(pin, nets.size());
        nets.add(new BuiltNet(pin.toString(), List.of(pin), List.of()));
      }
    }
    return new Netlist(List.copyOf(nets), Collections.unmodifiableMap(netOf));
  }
}
