package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.BoardModels;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.Allow;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.exercise.Scheme;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.part.PlainKind;

/** Random exercises, sound builds of them, and slips. */
final class Labs {
  private final Random random;

  Labs(long seed) {
    random = new Random(seed);
  }

  static Exercise exercise(String board, List<Part> parts, Allow allow, String... nets) {
    var all = new ArrayList<Net>();
    for (String net : nets) {
      String[] words = net.split(" ");
      all.add(
          new Net(
              words[0],
              List.of(words).subList(1, words.length).stream()
                  .map(pin -> Pin.read(pin).orElseThrow())
                  .toList()));
    }
    return exercise(BoardModels.named(board).orElseThrow(), parts, all, allow);
  }

  private static Exercise exercise(
      BoardModel board, List<Part> parts, List<Net> nets, Allow allow) {
    return new Exercise(
        "lab",
        "Lab",
        "Lab",
        board,
        "hand-2000",
        parts,
        nets,
        List.of(),
        List.of(),
        allow,
        Scheme.USUAL);
  }

  /** A battery and other parts on nets of any shape; some pins on none. */
  Exercise exercise(int parts, Allow allow) {
    var kinds =
        List.of(
            PlainKind.RESISTOR,
            PlainKind.RESISTOR,
            PlainKind.LED,
            PlainKind.SWITCH,
            PlainKind.NPN,
            PlainKind.POTENTIOMETER,
            PlainKind.BUTTON);
    var all = new ArrayList<Part>(List.of(PlainKind.BATTERY.part("B1")));
    for (int i = 1; i < parts; i++) {
      all.add(kinds.get(random.nextInt(kinds.size())).part("X" + i, random.nextInt(2)));
    }
    int count = 2 + (int) (all.stream().mapToInt(part -> part.pins().size()).sum() / 2.6);
    var on = new LinkedHashMap<Integer, List<Pin>>();
    for (Part part : all) {
      var own = new ArrayList<Integer>();
      for (Pin pin : part.pins()) {
        boolean twin =
            part.kind().twins(part.fields()).stream().anyMatch(t -> t.indexOf(pin.name()) > 0);
        int net = random.nextInt(count);
        if (!own.contains(net) && !(twin && random.nextInt(3) > 0) && random.nextInt(15) > 0) {
          own.add(net);
          on.computeIfAbsent(net, n -> new ArrayList<>()).add(pin);
        }
      }
    }
    var nets = new ArrayList<Net>();
    on.forEach((net, pins) -> nets.add(new Net("n" + net, pins)));
    var names = List.of("400", "830", "830-split");
    return exercise(
        BoardModels.named(names.get(random.nextInt(names.size()))).orElseThrow(), all, nets, allow);
  }

  /** A sound build: each net on a few strips that links join, its pins anywhere on them. */
  Build build(Exercise exercise) {
    BoardModel board = exercise.board();
    var strips = new ArrayList<Integer>();
    for (int strip = 0; strip < board.strips(); strip++) {
      strips.add(strip);
    }
    int wide = Math.min(board.columns() - 1, 16 + exercise.nets().size());
    int near = random.nextInt(board.columns() - wide);
    strips.removeIf(
        strip -> strip < 2 * board.columns() && (strip < 2 * near || strip > 2 * (near + wide)));
    Collections.shuffle(strips, random);
    var used = new LinkedHashSet<Hole>();
    var holes = new LinkedHashMap<Pin, Hole>();
    var links = new ArrayList<Link>();
    for (List<Pin> net : nets(exercise)) {
      int most = (net.size() + 2) / 3 + random.nextInt(2);
      var own = new ArrayList<Integer>();
      for (int i = 0; i < most && !strips.isEmpty(); i++) {
        own.add(strips.remove(0));
        if (i > 0) {
          links.add(
              new Link(
                  free(board, used, own.get(random.nextInt(i))), free(board, used, own.get(i))));
        }
      }
      if (random.nextInt(8) == 0) {
        links.add(new Link(free(board, used, any(own)), free(board, used, any(own))));
      }
      for (Pin pin : net) {
        holes.put(pin, free(board, used, own));
      }
    }
    return new Build(board, placed(exercise, holes), links);
  }

  /** The build without the links that change no net. */
  static Build tidy(Exercise exercise, Build build) {
    for (int link = build.links().size() - 1; link >= 0; link--) {
      if (spare(exercise, build, link)) {
        return tidy(exercise, without(build, link));
      }
    }
    return build;
  }

  /** Whether a link changes no net: the same pins are joined without it. */
  static boolean spare(Exercise exercise, Build build, int link) {
    return Equivalents.nets(exercise, build)
        .equals(Equivalents.nets(exercise, without(build, link)));
  }

  static Build without(Build build, int link) {
    var links = new ArrayList<>(build.links());
    links.remove(link);
    return new Build(build.board(), build.placed(), links);
  }

  /** One lead or one end of a link in any other hole. */
  Slip slip(Build build) {
    int leads = build.placed().stream().mapToInt(placed -> placed.holes().size()).sum();
    int pick = random.nextInt(leads + 2 * build.links().size());
    Hole to = hole(build);
    if (pick >= leads) {
      int end = (pick - leads) % 2;
      int link = (pick - leads) / 2;
      var links = new ArrayList<>(build.links());
      links.set(link, links.get(link).with(end, to));
      return new Slip(
          new Build(build.board(), build.placed(), links),
          "link " + link + " " + end,
          build.links().get(link).end(end));
    }
    for (int i = 0; ; i++) {
      Placed placed = build.placed().get(i);
      for (var entry : placed.holes().entrySet()) {
        if (pick-- == 0) {
          return new Slip(
              moved(build, i, entry.getKey(), to),
              placed.ref() + "." + entry.getKey(),
              entry.getValue());
        }
      }
    }
  }

  record Slip(Build build, String what, Hole from) {}

  static Build moved(Build build, int part, String pin, Hole to) {
    var placed = new ArrayList<>(build.placed());
    var holes = new LinkedHashMap<>(placed.get(part).holes());
    holes.put(pin, to);
    placed.set(part, new Placed(placed.get(part).ref(), holes, Optional.empty(), Optional.empty()));
    return new Build(build.board(), placed, build.links());
  }

  /** A free hole, as likely in a strip that is in use as in any other. */
  private Hole hole(Build build) {
    var used = new LinkedHashSet<Hole>();
    build.placed().forEach(placed -> used.addAll(placed.holes().values()));
    build.links().forEach(link -> used.addAll(List.of(link.from(), link.to())));
    var strips = used.stream().map(hole -> build.board().stripOrNone(hole)).distinct().toList();
    for (int tries = 0; tries < 100; tries++) {
      int strip = random.nextBoolean() ? any(strips) : random.nextInt(build.board().strips());
      var free = build.board().holes(strip).stream().filter(hole -> !used.contains(hole)).toList();
      if (!free.isEmpty()) {
        return free.get(random.nextInt(free.size()));
      }
    }
    throw new IllegalStateException("no free hole");
  }

  private static List<List<Pin>> nets(Exercise exercise) {
    var nets = new ArrayList<List<Pin>>();
    var on = new LinkedHashSet<Pin>();
    exercise.nets().forEach(net -> nets.add(net.pins()));
    exercise.nets().forEach(net -> on.addAll(net.pins()));
    exercise.pins().stream()
        .filter(pin -> !on.contains(pin))
        .forEach(pin -> nets.add(List.of(pin)));
    return nets;
  }

  private static List<Placed> placed(Exercise exercise, Map<Pin, Hole> holes) {
    var placed = new ArrayList<Placed>();
    for (Part part : exercise.parts()) {
      var own = new LinkedHashMap<String, Hole>();
      part.pins().forEach(pin -> own.put(pin.name(), holes.get(pin)));
      placed.add(new Placed(part.ref(), own, Optional.empty(), Optional.empty()));
    }
    return placed;
  }

  private Hole free(BoardModel board, Set<Hole> used, List<Integer> strips) {
    var order = new ArrayList<>(strips);
    Collections.shuffle(order, random);
    for (int strip : order) {
      for (Hole hole : board.holes(strip)) {
        if (!used.contains(hole)) {
          used.add(hole);
          return hole;
        }
      }
    }
    throw new IllegalStateException("full");
  }

  private Hole free(BoardModel board, Set<Hole> used, int strip) {
    return free(board, used, List.of(strip));
  }

  private int any(List<Integer> strips) {
    return strips.get(random.nextInt(strips.size()));
  }
}
