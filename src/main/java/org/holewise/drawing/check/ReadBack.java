package org.holewise.drawing.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawing.Dot;
import org.holewise.drawing.sheet.Drawing.End;
import org.holewise.drawing.sheet.Drawing.Figure;
import org.holewise.drawing.sheet.Drawing.Mark;
import org.holewise.drawing.sheet.Drawing.Text;
import org.holewise.drawing.sheet.Drawing.Wire;
import org.holewise.drawing.sheet.Point;
import org.holewise.engine.part.Pin;

/**
 * Reads the netlist from a drawing as a person does: wires that meet at an end are joined, wires
 * that cross are not unless there is a dot, equal symbols are joined. What elements say of their
 * nets is not looked at.
 */
public final class ReadBack {
  private final List<Wire> wires;
  private final List<Point> points = new ArrayList<>();
  private int[] parent = {};

  private ReadBack(Drawing drawing) {
    this.wires = drawing.wires();
  }

  /** Groups of pins that are joined, each sorted, those of one pin left out; in no order. */
  public static SortedSet<String> nets(Drawing drawing) {
    var groups = new TreeSet<String>();
    for (SortedSet<Pin> pins : new ReadBack(drawing).read(drawing)) {
      if (pins.size() > 1) {
        groups.add(pins.toString());
      }
    }
    return groups;
  }

  private List<SortedSet<Pin>> read(Drawing drawing) {
    List<End> ends = drawing.figures().stream().map(Figure::ends).flatMap(List::stream).toList();
    int n = wires.size() + ends.size() + drawing.marks().size();
    parent = new int[n];
    for (int i = 0; i < n; i++) {
      parent[i] = i;
    }
    wires.forEach(wire -> points.add(wire.from()));
    ends.forEach(end -> points.add(end.at()));
    drawing.marks().forEach(mark -> points.add(mark.at()));
    joinWires(drawing.dots());
    for (int i = wires.size(); i < n; i++) {
      joinPoint(i);
    }
    joinMarks(drawing, wires.size() + ends.size());
    Map<Integer, SortedSet<Pin>> groups = new LinkedHashMap<>();
    for (int i = 0; i < ends.size(); i++) {
      groups.computeIfAbsent(root(wires.size() + i), key -> new TreeSet<>()).add(ends.get(i).pin());
    }
    return List.copyOf(groups.values());
  }

  private void joinWires(List<Dot> dots) {
    for (int i = 0; i < wires.size(); i++) {
      for (int j = 0; j < i; j++) {
        Wire a = wires.get(i);
        Wire b = wires.get(j);
        if (Lines.on(a.from(), b)
            || Lines.on(a.to(), b)
            || Lines.on(b.from(), a)
            || Lines.on(b.to(), a)
            || dots.stream().anyMatch(dot -> Lines.on(dot.at(), a) && Lines.on(dot.at(), b))) {
          join(i, j);
        }
      }
    }
  }

  /** A pin or symbol on a wire, or on another pin. */
  private void joinPoint(int at) {
    for (int i = 0; i < wires.size(); i++) {
      if (Lines.on(points.get(at), wires.get(i))) {
        join(at, i);
      }
    }
    for (int i = wires.size(); i < at; i++) {
      if (points.get(i).equals(points.get(at))) {
        join(at, i);
      }
    }
  }

  /** Ground symbols are one; supply symbols are one where they say the same. */
  private void joinMarks(Drawing drawing, int from) {
    Map<String, Integer> first = new LinkedHashMap<>();
    for (int i = 0; i < drawing.marks().size(); i++) {
      if (drawing.marks().get(i).kind().equals("terminal")) {
        continue;
      }
      Integer other = first.putIfAbsent(says(drawing, drawing.marks().get(i)), from + i);
      if (other != null) {
        join(other, from + i);
      }
    }
  }

  private static String says(Drawing drawing, Mark mark) {
    return mark.kind()
        + drawing.texts().stream()
            .filter(text -> !text.net().isEmpty())
            .filter(text -> text.extent().meets(mark.body().grown(8)))
            .min(Comparator.comparingDouble(text -> aside(text, mark)))
            .map(Text::text)
            .orElse("");
  }

  /** How far a text's middle is from the line on which a symbol stands. */
  private static double aside(Text text, Mark mark) {
    return Math.abs(text.extent().x() + text.extent().width() / 2 - mark.at().x());
  }

  private int root(int i) {
    int at = i;
    while (parent[at] != at) {
      at = parent[at];
    }
    return at;
  }

  private void join(int a, int b) {
    parent[root(a)] = root(b);
  }
}
