package org.holewise.engine.solver;

import java.util.Arrays;
import java.util.List;
import org.holewise.engine.part.Part;

/** Which nets closed contacts make one, found by repainting. */
final class Metal {
  private Metal() {}

  static int[] of(Rows rows) {
    int[] metal = new int[rows.netlist().nets().size()];
    Arrays.setAll(metal, k -> k);
    for (Part part : rows.parts()) {
      for (List<String> pair : joined(part)) {
        paint(
            metal,
            rows.netlist().net(part.pin(pair.get(0))),
            rows.netlist().net(part.pin(pair.get(1))));
      }
    }
    return metal;
  }

  private static void paint(int[] metal, int a, int b) {
    int from = metal[b];
    int to = metal[a];
    for (int k = 0; k < metal.length; k++) {
      metal[k] = metal[k] == from ? to : metal[k];
    }
  }

  private static List<List<String>> joined(Part part) {
    boolean closed = part.fields().flag("closed", false);
    return switch (part.kind().name()) {
      case "switch" -> closed ? List.of(List.of("1", "2")) : List.of();
      case "button" ->
          closed
              ? List.of(List.of("1", "1a"), List.of("2", "2a"), List.of("1", "2"))
              : List.of(List.of("1", "1a"), List.of("2", "2a"));
      case "potentiometer" -> wiper(part.fields().number("set", 0.5));
      default -> List.of();
    };
  }

  private static List<List<String>> wiper(double set) {
    if (set == 0) {
      return List.of(List.of("1", "w"));
    }
    return set == 1 ? List.of(List.of("w", "2")) : List.of();
  }
}
