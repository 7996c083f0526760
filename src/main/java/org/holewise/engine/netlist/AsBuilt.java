package org.holewise.engine.netlist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * The nets of a build, and of builds that differ from it by a lead or a link: union–find over
 * strips, the links being the unions.
 *
 * <p>Every pin of the parts given is on a net. A pin without a hole on the board (its part not
 * placed, no hole given, a hole that is not there) is alone on its net. Parts of the build that are
 * not among those given, second placings and unknown pins are left out. Twins are not joined here.
 * Nets are numbered by their first pin in document order; strips without a pin make no net.
 *
 * <p>Immutable. Making one costs some microseconds, a variant less: strips are found once.
 */
public final class AsBuilt {
  private final BoardModel board;
  private final List<Pin> pins;
  private final Map<Pin, Integer> places;
  private final int[] pinStrips;
  private final int[] linkStrips;
  private final int[] netOfPin;
  private final int[] netOfStrip;
  private final int nets;

  private AsBuilt(
      BoardModel board,
      List<Pin> pins,
      Map<Pin, Integer> places,
      int[] pinStrips,
      int[] linkStrips) {
    this.board = board;
    this.pins = pins;
    this.places = places;
    this.pinStrips = pinStrips;
    this.linkStrips = linkStrips;
    int strips = 1 + Math.max(last(pinStrips), last(linkStrips));
    netOfPin = new int[pinStrips.length];
    netOfStrip = new int[strips];
    nets = number(join(strips));
  }

  public static Netlist netlist(Build build, List<Part> parts) {
    return of(build, parts).netlist();
  }

  public static AsBuilt of(Build build, List<Part> parts) {
    var board = build.board();
    var pins = new ArrayList<Pin>(4 * parts.size());
    parts.forEach(part -> pins.addAll(part.pins()));
    var placed = new HashMap<String, Placed>(roomy(parts.size()));
    build.placed().forEach(part -> placed.putIfAbsent(part.ref(), part));
    var places = new HashMap<Pin, Integer>(roomy(pins.size()));
    int[] pinStrips = new int[pins.size()];
    for (int i = 0; i < pinStrips.length; i++) {
      Pin pin = pins.get(i);
      places.put(pin, i);
      Placed part = placed.get(pin.ref());
      var hole = part == null ? Optional.<Hole>empty() : part.hole(pin.name());
      pinStrips[i] = hole.isPresent() ? board.stripOrNone(hole.get()) : -1;
    }
    int[] linkStrips = new int[2 * build.links().size()];
    for (int i = 0; i < linkStrips.length; i++) {
      linkStrips[i] = board.stripOrNone(build.links().get(i / 2).end(i % 2));
    }
    return new AsBuilt(board, pins, places, pinStrips, linkStrips);
  }

  /** The same build with a link left out; the others keep their numbers. */
  public AsBuilt without(int link) {
    int[] links = linkStrips.clone();
    links[2 * link] = -1;
    links[2 * link + 1] = -1;
    return new AsBuilt(board, pins, places, pinStrips, links);
  }

  /** The same build with one end of a link in another hole. */
  public AsBuilt with(int link, int end, Hole hole) {
    int[] links = linkStrips.clone();
    links[2 * link + end] = board.stripOrNone(hole);
    return new AsBuilt(board, pins, places, pinStrips, links);
  }

  /** The same build with one link more; its number is the next one. */
  public AsBuilt with(Link link) {
    int[] links = Arrays.copyOf(linkStrips, linkStrips.length + 2);
    links[linkStrips.length] = board.stripOrNone(link.from());
    links[linkStrips.length + 1] = board.stripOrNone(link.to());
    return new AsBuilt(board, pins, places, pinStrips, links);
  }

  /** The same build with a lead in another hole. */
  public AsBuilt with(Pin pin, Hole hole) {
    int[] strips = pinStrips.clone();
    strips[place(pin)] = board.stripOrNone(hole);
    return new AsBuilt(board, pins, places, strips, linkStrips);
  }

  /** How many nets there are. */
  public int nets() {
    return nets;
  }

  public int net(Pin pin) {
    return netOfPin[place(pin)];
  }

  /** The net that the strip of a hole is part of; -1 where no pin touches it. */
  public int netAt(Hole hole) {
    int strip = board.stripOrNone(hole);
    return strip < 0 || strip >= netOfStrip.length ? -1 : netOfStrip[strip];
  }

  public Netlist netlist() {
    var pinsOf = new ArrayList<List<Pin>>(nets);
    var stripsOf = new ArrayList<List<Integer>>(nets);
    for (int net = 0; net < nets; net++) {
      pinsOf.add(new ArrayList<>());
      stripsOf.add(new ArrayList<>());
    }
    var netOf = new LinkedHashMap<Pin, Integer>(roomy(netOfPin.length));
    for (int i = 0; i < netOfPin.length; i++) {
      pinsOf.get(netOfPin[i]).add(pins.get(i));
      netOf.put(pins.get(i), netOfPin[i]);
    }
    for (int strip = 0; strip < netOfStrip.length; strip++) {
      if (netOfStrip[strip] >= 0) {
        stripsOf.get(netOfStrip[strip]).add(strip);
      }
    }
    var all = new ArrayList<BuiltNet>(nets);
    for (int net = 0; net < nets; net++) {
      var own = pinsOf.get(net);
      all.add(new BuiltNet(own.get(0).toString(), own, stripsOf.get(net)));
    }
    return new Netlist(all, Collections.unmodifiableMap(netOf));
  }

  /** Capacity of a map that so many entries leave as it is. */
  private static int roomy(int entries) {
    return 2 * entries;
  }

  private DisjointSets join(int strips) {
    var sets = new DisjointSets(strips);
    for (int i = 0; i < linkStrips.length; i += 2) {
      if (linkStrips[i] >= 0 && linkStrips[i + 1] >= 0) {
        sets.union(linkStrips[i], linkStrips[i + 1]);
      }
    }
    return sets;
  }

  /** Numbers the nets by their first pins; returns how many there are. */
  private int number(DisjointSets sets) {
    int[] netOfRoot = new int[netOfStrip.length];
    Arrays.fill(netOfRoot, -1);
    int next = 0;
    for (int i = 0; i < pinStrips.length; i++) {
      int root = pinStrips[i] < 0 ? -1 : sets.find(pinStrips[i]);
      if (root < 0) {
        netOfPin[i] = next++;
      } else {
        if (netOfRoot[root] < 0) {
          netOfRoot[root] = next++;
        }
        netOfPin[i] = netOfRoot[root];
      }
    }
    for (int strip = 0; strip < netOfStrip.length; strip++) {
      netOfStrip[strip] = netOfRoot[sets.find(strip)];
    }
    return next;
  }

  private int place(Pin pin) {
    Integer place = places.get(pin);
    if (place == null) {
      throw new IllegalArgumentException("no such pin: " + pin);
    }
    return place;
  }

  private static int last(int[] strips) {
    int last = -1;
    for (int strip : strips) {
      last = Math.max(last, strip);
    }
    return last;
  }
}
