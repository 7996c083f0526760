package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Kind;
import org.holewise.engine.part.Level;
import org.holewise.engine.part.Pin;
import org.holewise.engine.part.Registry;

/**
 * A circuit with chips, written in a test: {@code chip("U1 74393 1=clk 2=0 family=HC")} says which
 * pin is on which net; supply pins are on 5 and 0 unless said, other pins are on nothing.
 */
final class Bread {
  private final StringBuilder rows = new StringBuilder();

  Bread() {
    this(5);
  }

  Bread(double volts) {
    rows("B1 supply 5 0 volts=" + volts);
  }

  Bread rows(String more) {
    rows.append(more).append('\n');
    return this;
  }

  Bread chip(String text) {
    String[] words = text.split(" ");
    Kind kind = Registry.kind(words[1]).orElseThrow();
    Map<String, String> on = new LinkedHashMap<>();
    List<String> pins = kind.pins(Fields.NONE);
    pins.forEach(pin -> on.put(pin, words[0] + "." + pin));
    on.put(pins.get(pins.size() - 1), "5");
    on.put(pins.get(pins.size() / 2 - 1), "0");
    var fields = new ArrayList<String>();
    for (String word : List.of(words).subList(2, words.length)) {
      String[] sides = word.split("=", 2);
      if (on.containsKey(sides[0])) {
        on.put(sides[0], sides[1]);
      } else {
        fields.add(word);
      }
    }
    return rows(
        words[0]
            + " "
            + words[1]
            + " "
            + String.join(" ", on.values())
            + " "
            + String.join(" ", fields));
  }

  Rows rows() {
    return Rows.of(rows.toString());
  }

  Settled settled() {
    return LogicSolver.settle(rows().circuit());
  }

  /** After pulses at the wire of a pin. */
  Settled after(int pulses, String clock) {
    return LogicSolver.settle(rows().circuit(), Pin.read(clock).orElseThrow(), pulses);
  }

  /** What outputs drive, in the order of the logic: {@code HL?-}. */
  static String outputs(Settled settled, String ref) {
    var text = new StringBuilder();
    for (Level level : settled.outputs(ref)) {
      text.append("LH?-".charAt(level.ordinal()));
    }
    return text.toString();
  }

  static OperatingPoint point(Settled settled) {
    return Rows.solved(settled.circuit());
  }
}
