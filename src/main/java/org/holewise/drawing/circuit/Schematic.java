package org.holewise.drawing.circuit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.exercise.Seat;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * What is to be drawn: parts as they stand in an exercise's first condition, the nets that join
 * their pins, and where its author wants parts to stand. Pins on no net, and nets of one pin, are
 * allowed. A pin is on one net at most; of several that name it the first counts. Immutable.
 *
 * @param seats by ref
 */
public record Schematic(List<Part> parts, List<Net> nets, Map<String, Seat> seats) {
  public Schematic {
    parts = List.copyOf(parts);
    nets = tidied(parts, nets);
    seats = Map.copyOf(seats);
  }

  public static Schematic of(Exercise exercise) {
    return new Schematic(
        exercise.partsIn(exercise.conditions().get(0)), exercise.nets(), exercise.seats());
  }

  /** Each pin once, those that no part has left out. */
  private static List<Net> tidied(List<Part> parts, List<Net> nets) {
    Set<Pin> free = new HashSet<>();
    parts.forEach(part -> free.addAll(part.pins()));
    var tidy = new ArrayList<Net>();
    for (Net net : nets) {
      tidy.add(new Net(net.name(), net.pins().stream().filter(free::remove).toList()));
    }
    return List.copyOf(tidy);
  }

  /** The net that a pin is alone on. */
  public Optional<String> lone(Pin pin) {
    return nets.stream()
        .filter(net -> net.pins().size() == 1 && net.pins().get(0).equals(pin))
        .map(Net::name)
        .findFirst();
  }

  /** The net that each pin is on. */
  public Map<Pin, String> netOf() {
    var of = new LinkedHashMap<Pin, String>();
    nets.forEach(net -> net.pins().forEach(pin -> of.put(pin, net.name())));
    return of;
  }
}
