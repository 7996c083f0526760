package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.holewise.engine.exercise.Allow;
import org.holewise.engine.part.Part;

/**
 * All ways in which each part may take a place of the schematic: its own, that of an equal part,
 * any of its chain; with its pins exchanged where that changes nothing. In each chain the number of
 * parts of a class (and direction) stays what the schematic says: each uses up one of a slot.
 */
final class Options {
  private final Terminals t;
  private final int[] classOf;
  private final List<Integer> slots = new ArrayList<>();
  private final List<List<Option>> options = new ArrayList<>();

  private Options(Terminals t, int[] classOf) {
    this.t = t;
    this.classOf = classOf;
    t.parts.forEach(part -> options.add(new ArrayList<>()));
  }

  /** Number of each part's class: parts of one class are equal. */
  static int[] classes(Terminals t, Allow allow) {
    int[] classOf = new int[t.parts.size()];
    for (int i = 0; i < classOf.length; i++) {
      classOf[i] = i;
      for (int j = 0; allow.equalParts() && j < i && classOf[i] == i; j++) {
        if (t.parts.get(i).alike(t.parts.get(j))) {
          classOf[i] = classOf[j];
        }
      }
    }
    return classOf;
  }

  static Options of(Terminals t, int[] classOf, List<Chain> chains) {
    var all = new Options(t, classOf);
    var chained = new boolean[classOf.length];
    for (Chain chain : chains) {
      chain.places().forEach(place -> chained[place] = true);
      all.chain(chain);
    }
    for (int place = 0; place < classOf.length; place++) {
      if (!chained[place]) {
        all.place(place);
      }
    }
    return all;
  }

  /** Options of each part, those of its own place first. */
  Option[][] table() {
    var table = new Option[options.size()][];
    for (int i = 0; i < table.length; i++) {
      int own = i;
      var first = options.get(i).stream().filter(option -> option.place() == own);
      var rest = options.get(i).stream().filter(option -> option.place() != own);
      table[i] = java.util.stream.Stream.concat(first, rest).toArray(Option[]::new);
    }
    return table;
  }

  int[] slots() {
    return slots.stream().mapToInt(Integer::intValue).toArray();
  }

  private void place(int place) {
    slots.add(1);
    for (int part = 0; part < classOf.length; part++) {
      if (classOf[part] == classOf[place]) {
        add(part, new Option(place, slots.size() - 1, nets(place, Map.of())));
        for (var exchange : exchanges(part)) {
          add(part, new Option(place, slots.size() - 1, nets(place, exchange)));
        }
      }
    }
  }

  private void chain(Chain chain) {
    int first = slots.size();
    var kinds = new ArrayList<List<Integer>>();
    for (int i = 0; i < chain.places().size(); i++) {
      int part = chain.places().get(i);
      int facing = reversible(part) ? 0 : 1 + chain.near()[i] - t.terminals(part)[0];
      var kind = List.of(classOf[part], facing);
      int slot = kinds.indexOf(kind);
      if (slot < 0) {
        kinds.add(kind);
        slots.add(1);
      } else {
        slots.set(first + slot, slots.get(first + slot) + 1);
      }
    }
    for (int part = 0; part < classOf.length; part++) {
      for (int slot = 0; slot < kinds.size(); slot++) {
        if (kinds.get(slot).get(0) == classOf[part]) {
          inChain(part, chain, first + slot, kinds.get(slot).get(1));
        }
      }
    }
  }

  private void inChain(int part, Chain chain, int slot, int facing) {
    for (int i = 0; i < chain.places().size(); i++) {
      int place = chain.places().get(i);
      boolean usual = chain.near()[i] == t.terminals(place)[0];
      for (int near : facing > 0 ? List.of(facing - 1) : usual ? List.of(0, 1) : List.of(1, 0)) {
        int[] want = new int[t.firstPin[part + 1] - t.firstPin[part]];
        for (int j = 0; j < want.length; j++) {
          int own = t.terminal[t.firstPin[part] + j] - t.terminals(part)[0];
          want[j] = own == near ? chain.in()[i] : chain.out()[i];
        }
        add(part, new Option(place, slot, want));
      }
    }
  }

  private void add(int part, Option option) {
    if (options.get(part).stream().noneMatch(option::same)) {
      options.get(part).add(option);
    }
  }

  /** Wanted nets of the pins of a part that takes a place with its pins exchanged. */
  private int[] nets(int place, Map<String, String> exchange) {
    Part part = t.parts.get(place);
    var pins = part.kind().pins(part.fields());
    return pins.stream()
        .mapToInt(pin -> t.net[t.firstPin[place] + pins.indexOf(exchange.getOrDefault(pin, pin))])
        .toArray();
  }

  private List<Map<String, String>> exchanges(int part) {
    Part own = t.parts.get(part);
    return own.kind().exchanges(own.fields());
  }

  /** Whether its two terminals may be exchanged. */
  private boolean reversible(int part) {
    Part own = t.parts.get(part);
    var pins = own.kind().pins(own.fields());
    int first = t.firstPin[part];
    return exchanges(part).stream()
        .anyMatch(
            exchange ->
                pins.stream()
                    .allMatch(
                        pin ->
                            t.terminal[first + pins.indexOf(pin)]
                                != t.terminal[
                                    first + pins.indexOf(exchange.getOrDefault(pin, pin))]));
  }
}
