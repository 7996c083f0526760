package org.holewise.drawing.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Leg;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.PartValue;
import org.holewise.engine.part.Pin;

/**
 * A schematic as rows to be read: the twin of its drawing for whoever does not see it. Parts in the
 * order written, each with its pins and what those are joined to. Immutable.
 */
public record Listing(List<Row> rows) {
  public Listing {
    rows = List.copyOf(rows);
  }

  /**
   * A part.
   *
   * @param kind the kind's name
   * @param value by which it is picked out of a tray; empty where it has none
   */
  public record Row(String ref, String kind, String value, List<Joint> joints) {
    public Row {
      joints = List.copyOf(joints);
    }
  }

  /**
   * A pin that is on a net.
   *
   * @param name as the data sheet has it; the pin's own where it has no other
   * @param others the other pins of the net
   */
  public record Joint(Pin pin, String name, String net, List<Pin> others) {
    public Joint {
      others = List.copyOf(others);
    }
  }

  public static Listing of(Schematic schematic) {
    Map<Pin, Net> on = new TreeMap<>();
    schematic.nets().forEach(net -> net.pins().forEach(pin -> on.put(pin, net)));
    return new Listing(schematic.parts().stream().map(part -> row(part, on)).toList());
  }

  private static Row row(Part part, Map<Pin, Net> on) {
    var joints = new ArrayList<Joint>();
    for (Pin pin : part.pins()) {
      Net net = on.get(pin);
      if (net != null) {
        List<Pin> others = net.pins().stream().filter(other -> !other.equals(pin)).toList();
        joints.add(new Joint(pin, name(part, pin), net.name(), others));
      }
    }
    return new Row(part.ref(), part.kind().name(), PartValue.of(part), joints);
  }

  private static String name(Part part, Pin pin) {
    return part.kind().legs(part.fields()).stream()
        .filter(leg -> leg.pin().equals(pin.name()))
        .map(Leg::name)
        .findFirst()
        .orElse(pin.name());
  }
}
