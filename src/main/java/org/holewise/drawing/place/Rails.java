package org.holewise.drawing.place;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.holewise.drawing.circuit.Schematic;
import org.holewise.engine.part.Feed;
import org.holewise.engine.part.Part;

/**
 * Which nets feed and which return: those of steady sources, told apart by their voltage against
 * ground. Ground is the net that most sources share, a generator's minus before others.
 */
public final class Rails {

  /** A net that sources feed, with all that is joined by voltages to ground. */
  private record Edge(int plus, int minus, double volts) {}

  private static final List<String> LEADS_IN =
      List.of("switch", "button", "diode", "inductor", "changeover");

  private final Nets nets;
  private final double[] volts;
  private final boolean[] rail;
  private final int ground;
  private final boolean fed;
  private Optional<String> leadIn = Optional.empty();

  public Rails(Schematic schematic, Nets nets) {
    this.nets = nets;
    this.volts = new double[nets.size()];
    this.rail = new boolean[nets.size()];
    var edges = edges(schematic);
    this.ground =
        edges.isEmpty() && rectified(schematic) != Nets.NONE
            ? diodes(schematic, 0)
            : ground(schematic, edges);
    this.fed = !edges.isEmpty();
    int bridge = edges.isEmpty() ? rectified(schematic) : Nets.NONE;
    if (bridge != Nets.NONE) {
      rail[ground] = true;
      rail[bridge] = true;
      volts[bridge] = 1;
    } else if (ground != Nets.NONE) {
      spread(edges);
      signals(schematic);
      leadIn(schematic);
    }
  }

  /** Ground, or none. */
  public int ground() {
    return ground;
  }

  /** 1 for a net that feeds, −1 for one that returns, 0 for a signal. */
  public int way(int net) {
    return net == Nets.NONE || !rail[net] ? 0 : volts[net] > 0 ? 1 : -1;
  }

  double volts(int net) {
    return volts[net];
  }

  /** The net of the highest supply, or none. */
  public int top() {
    return IntStream.range(0, rail.length)
        .filter(net -> way(net) > 0)
        .boxed()
        .reduce((a, b) -> before(b, a) ? b : a)
        .orElse(Nets.NONE);
  }

  /** Higher, or as high with more pins. */
  private boolean before(int a, int b) {
    return volts[a] > volts[b]
        || (volts[a] == volts[b] && nets.pins(a).size() > nets.pins(b).size());
  }

  /** The net of the lowest return, or none. */
  public int bottom() {
    return IntStream.range(0, rail.length)
        .filter(net -> way(net) < 0)
        .boxed()
        .reduce((a, b) -> volts[b] < volts[a] ? b : a)
        .orElse(Nets.NONE);
  }

  /** Whether a steady source feeds it. */
  boolean fed() {
    return fed;
  }

  /** Ref of a part between the source's plus and all that it feeds, such as a main switch. */
  Optional<String> leadIn() {
    return leadIn;
  }

  private List<Edge> edges(Schematic schematic) {
    var edges = new ArrayList<Edge>();
    for (Part part : schematic.parts()) {
      for (Feed feed : part.kind().feeds(part)) {
        int plus = nets.of(part.pin(feed.plus()));
        int minus = nets.of(part.pin(feed.minus()));
        if (plus != Nets.NONE && minus != Nets.NONE && plus != minus) {
          edges.add(new Edge(plus, minus, Math.max(feed.volts(), 1e-3)));
        }
      }
    }
    return edges;
  }

  /** Where the cathodes of a bridge meet, the anodes of two more meeting elsewhere. */
  private int rectified(Schematic schematic) {
    int anodes = diodes(schematic, 0);
    int cathodes = diodes(schematic, 1);
    return anodes != Nets.NONE && anodes != cathodes ? cathodes : Nets.NONE;
  }

  /** A net on which two diodes have this pin and none the other. */
  private int diodes(Schematic schematic, int pin) {
    int[] count = new int[nets.size()];
    for (Part part : schematic.parts()) {
      if (part.kind().name().equals("diode")) {
        for (int i = 0; i < 2; i++) {
          int net = nets.of(part.pins().get(i));
          if (net != Nets.NONE) {
            count[net] += i == pin ? 1 : -9;
          }
        }
      }
    }
    return IntStream.range(0, count.length)
        .filter(net -> count[net] >= 2)
        .findFirst()
        .orElse(Nets.NONE);
  }

  private int ground(Schematic schematic, List<Edge> edges) {
    int[] score = new int[nets.size()];
    for (Edge edge : edges) {
      score[edge.minus] += 1000;
      if (edges.stream().anyMatch(other -> other.plus == edge.minus)) {
        score[edge.minus] += 4000;
      }
    }
    for (Part part : schematic.parts()) {
      if (part.kind().swings()) {
        int minus = nets.of(part.pins().get(1));
        if (minus != Nets.NONE) {
          score[minus] += 2000;
        }
      }
    }
    for (int net = 0; net < score.length; net++) {
      score[net] += nets.pins(net).size();
    }
    int best = Nets.NONE;
    for (int net = 0; net < score.length; net++) {
      if (score[net] > 2 && (best == Nets.NONE || score[net] > score[best])) {
        best = net;
      }
    }
    return best;
  }

  private void spread(List<Edge> edges) {
    rail[ground] = true;
    var next = new ArrayDeque<Integer>(List.of(ground));
    while (!next.isEmpty()) {
      int net = next.remove();
      for (Edge edge : edges) {
        if (edge.minus == net && !rail[edge.plus]) {
          reach(edge.plus, volts[net] + edge.volts, next);
        } else if (edge.plus == net && !rail[edge.minus]) {
          reach(edge.minus, volts[net] - edge.volts, next);
        }
      }
    }
  }

  /** A source that serves one part is a signal's where others feed more. */
  private void signals(Schematic schematic) {
    int top = top();
    for (int net = 0; net < rail.length; net++) {
      boolean alone = nets.pins(net).size() == 2 && feeds(schematic, net) == 1;
      if (way(net) > 0 && net != top && alone && nets.pins(top).size() >= 2) {
        rail[net] = false;
        volts[net] = 0;
      }
    }
  }

  private void reach(int net, double at, ArrayDeque<Integer> next) {
    rail[net] = true;
    volts[net] = at;
    next.add(net);
  }

  /** What feeds is behind a main switch, or behind the first part of a plain loop. */
  private void leadIn(Schematic schematic) {
    int top = top();
    if (top == Nets.NONE || nets.pins(top).size() != 2 || feeds(schematic, top) != 1) {
      return;
    }
    for (Part part : schematic.parts()) {
      List<Integer> on = part.pins().stream().map(nets::of).filter(n -> n != Nets.NONE).toList();
      if (part.kind().source() || on.size() != 2 || !on.contains(top)) {
        continue;
      }
      int other = on.get(0) == top ? on.get(1) : on.get(0);
      if (rail[other] || !leads(schematic, part, other)) {
        continue;
      }
      leadIn = Optional.of(part.ref());
      rail[other] = true;
      volts[other] = volts[top];
      rail[top] = false;
      volts[top] = 0;
      return;
    }
  }

  private long feeds(Schematic schematic, int net) {
    return schematic.parts().stream()
        .filter(part -> part.kind().source())
        .flatMap(part -> part.pins().stream())
        .filter(pin -> nets.of(pin) == net)
        .count();
  }

  private boolean leads(Schematic schematic, Part part, int other) {
    boolean loop = IntStream.range(0, nets.size()).allMatch(net -> nets.pins(net).size() == 2);
    boolean shunted =
        schematic.parts().stream()
            .filter(each -> each.kind().name().equals("zener"))
            .anyMatch(each -> each.pins().stream().anyMatch(pin -> nets.of(pin) == other));
    return part.pins().size() <= 4 && (loop || LEADS_IN.contains(part.kind().name()) || shunted);
  }
}
