package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.engine.netlist.BuiltNet;
import org.holewise.engine.netlist.Netlist;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Kind;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.part.Registry;

/**
 * A circuit written as rows: {@code ref kind net net … field=value …}, the nets in the order of the
 * kind's pins; a dot in a field's name makes a group. Numbers take the prefixes of the trade.
 */
final class Rows {
  private final List<Part> parts = new ArrayList<>();
  private final Map<String, List<Pin>> nets = new LinkedHashMap<>();

  private Rows() {}

  /** Rows apart by semicolons or lines. */
  static Rows of(String text) {
    var rows = new Rows();
    text.lines()
        .flatMap(line -> java.util.Arrays.stream(line.split(";")))
        .map(String::strip)
        .filter(row -> !row.isEmpty())
        .forEach(rows::add);
    return rows;
  }

  static Circuit circuit(String text) {
    return of(text).circuit();
  }

  static OperatingPoint solved(String text) {
    return solved(circuit(text));
  }

  static OperatingPoint solved(Circuit circuit) {
    Outcome outcome = OperatingPointSolver.solve(circuit);
    if (outcome instanceof OperatingPoint point) {
      return point;
    }
    throw new AssertionError(outcome.toString());
  }

  private void add(String row) {
    String[] words = row.split("\\s+");
    Kind kind = Registry.kind(words[1]).orElseThrow(() -> new IllegalArgumentException(row));
    Fields fields = Fields.NONE;
    List<String> on = new ArrayList<>();
    for (String word : List.of(words).subList(2, words.length)) {
      int equals = word.indexOf('=');
      if (equals < 0) {
        on.add(word);
      } else {
        fields = with(fields, word.substring(0, equals), word.substring(equals + 1));
      }
    }
    add(new Part(words[0], kind, fields), on);
  }

  /** Adds a part of any kind, its pins on nets of these names. */
  Rows add(Part part, List<String> on) {
    List<Pin> pins = part.pins();
    if (pins.size() != on.size()) {
      throw new IllegalArgumentException(part.ref() + " has pins " + pins + ", not " + on.size());
    }
    parts.add(part);
    for (int k = 0; k < on.size(); k++) {
      nets.computeIfAbsent(on.get(k), name -> new ArrayList<>()).add(pins.get(k));
    }
    return this;
  }

  /** Adds the parts of other rows, on nets of the same names. */
  Rows add(Rows other) {
    for (Part part : other.parts) {
      add(part, part.pins().stream().map(other::name).toList());
    }
    return this;
  }

  private String name(Pin pin) {
    return nets.entrySet().stream()
        .filter(net -> net.getValue().contains(pin))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow();
  }

  private static Fields with(Fields fields, String name, String value) {
    int dot = name.indexOf('.');
    if (dot < 0) {
      return fields.with(name, value(value));
    }
    String group = name.substring(0, dot);
    return fields.with(group, with(fields.group(group), name.substring(dot + 1), value));
  }

  private static Object value(String text) {
    if (text.equals("true") || text.equals("false")) {
      return Boolean.valueOf(text);
    }
    return text.matches("-?[0-9.]+([eE]-?[0-9]+)?[pnumkM]?") ? (Object) number(text) : text;
  }

  static double number(String text) {
    int prefix = "pnumkM".indexOf(text.charAt(text.length() - 1));
    return prefix < 0
        ? Double.parseDouble(text)
        : Double.parseDouble(
            text.substring(0, text.length() - 1)
                + List.of("e-12", "e-9", "e-6", "e-3", "e3", "e6").get(prefix));
  }

  List<Part> parts() {
    return parts;
  }

  Netlist netlist() {
    var built = new ArrayList<BuiltNet>();
    var netOf = new LinkedHashMap<Pin, Integer>();
    nets.forEach(
        (name, pins) -> {
          pins.forEach(pin -> netOf.put(pin, built.size()));
          built.add(new BuiltNet(name, List.copyOf(pins), List.of()));
        });
    return new Netlist(built, netOf);
  }

  Circuit circuit() {
    return Circuit.of(parts, netlist(), 25);
  }

  /** The bare metal of a lead, {@code R1.2}, or a net by its name. */
  Point at(String name) {
    int net = List.copyOf(nets.keySet()).indexOf(name);
    return net >= 0 ? new Point.AtNet(net) : pin(name);
  }

  static Point pin(String name) {
    return new Point.AtPin(Pin.read(name).orElseThrow());
  }

  static Pin lead(String name) {
    return Pin.read(name).orElseThrow();
  }
}
