package org.holewise.drawing.place;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.drawing.circuit.Schematic;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Pin;

/** The nets of a schematic by number, those of at least two pins: others draw no wire. */
public final class Nets {

  /** No net. */
  public static final int NONE = -1;

  private final List<String> names = new ArrayList<>();
  private final List<List<Pin>> pins = new ArrayList<>();
  private final Map<Pin, Integer> of = new LinkedHashMap<>();

  public Nets(Schematic schematic) {
    for (Net net : schematic.nets()) {
      if (net.pins().size() > 1) {
        net.pins().forEach(pin -> of.put(pin, names.size()));
        names.add(net.name());
        pins.add(net.pins());
      }
    }
  }

  public int size() {
    return names.size();
  }

  public String name(int net) {
    return names.get(net);
  }

  public List<Pin> pins(int net) {
    return pins.get(net);
  }

  public int of(Pin pin) {
    return of.getOrDefault(pin, NONE);
  }

  boolean wired(Pin pin) {
    return of.containsKey(pin);
  }
}
