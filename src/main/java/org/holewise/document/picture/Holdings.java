package org.holewise.document.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.document.picture.BoardPicture.Metal;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.netlist.AsBuilt;
import org.holewise.engine.netlist.BuiltNet;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/** What the strips and rails of a build hold, by the holes that were entered and nothing else. */
final class Holdings {
  private final Build build;
  private final AsBuilt built;
  private final List<BuiltNet> nets;
  private final Map<Integer, List<Pin>> own = new LinkedHashMap<>();

  private Holdings(Build build, List<Part> parts) {
    this.build = build;
    this.built = AsBuilt.of(build, parts);
    this.nets = built.netlist().nets();
    parts.stream().flatMap(part -> part.pins().stream()).forEach(this::put);
  }

  static Holdings of(Build build, List<Part> parts) {
    return new Holdings(build, parts);
  }

  private void put(Pin pin) {
    build
        .placed(pin.ref())
        .flatMap(placed -> placed.hole(pin.name()))
        .ifPresent(
            hole ->
                build
                    .board()
                    .strip(hole)
                    .ifPresent(
                        strip -> own.computeIfAbsent(strip, s -> new ArrayList<>()).add(pin)));
  }

  /** The pins in the strip of a hole; where there are none, those that its links lead to. */
  List<Pin> at(Hole hole) {
    List<Pin> there = own.getOrDefault(build.board().stripOrNone(hole), List.of());
    int net = built.netAt(hole);
    return there.isEmpty() && net >= 0 ? nets.get(net).pins() : List.copyOf(there);
  }

  /** The pins at both ends of a link. */
  List<Pin> at(Link link) {
    var pins = new ArrayList<>(at(link.from()));
    at(link.to()).stream().filter(pin -> !pins.contains(pin)).forEach(pins::add);
    return List.copyOf(pins);
  }

  /** Each strip and rail that holds a pin or is led to one, where it is drawn. */
  List<Metal> metals(Seats seats, Plan plan, Ground ground) {
    var metals = new LinkedHashMap<Box, Metal>();
    for (Hole hole : entered()) {
      List<Pin> pins = at(hole);
      seats
          .of(build, hole)
          .filter(seat -> plan.spot(seat).isPresent() && !pins.isEmpty())
          .ifPresent(
              seat ->
                  ground
                      .outlines(seat)
                      .forEach(o -> metals.putIfAbsent(o.box(), new Metal(pins, o.box()))));
    }
    return List.copyOf(metals.values());
  }

  private List<Hole> entered() {
    var holes = new ArrayList<Hole>();
    for (Placed placed : build.placed()) {
      holes.addAll(placed.holes().values());
    }
    for (Link link : build.links()) {
      holes.add(link.from());
      holes.add(link.to());
    }
    return holes;
  }
}
