package org.holewise.drawing.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawing.Dot;
import org.holewise.drawing.sheet.Drawing.End;
import org.holewise.drawing.sheet.Drawing.Mark;
import org.holewise.drawing.sheet.Drawing.Wire;
import org.holewise.drawing.sheet.Point;

/** Dots are where three meet, and nothing ends in nothing. */
final class JointLaws {
  private final Drawing drawing;
  private final Faults faults;

  private JointLaws(Drawing drawing, Faults faults) {
    this.drawing = drawing;
    this.faults = faults;
  }

  static void judge(Drawing drawing, Faults faults) {
    var laws = new JointLaws(drawing, faults);
    laws.dotsAreWhereThreeMeet();
    laws.noEndIsLoose();
  }

  private void dotsAreWhereThreeMeet() {
    Map<Point, Integer> arms = new LinkedHashMap<>();
    for (Point point : joints()) {
      arms.put(point, arms(point));
    }
    var dotted = new HashSet<Point>();
    for (Dot dot : drawing.dots()) {
      dotted.add(dot.at());
      if (arms(dot.at()) < 3) {
        faults.add("dot-without-joint", List.of(), List.of(dot.net()));
      }
    }
    arms.forEach(
        (point, number) -> {
          if (number > 2 && !dotted.contains(point)) {
            faults.add("joint-without-dot", List.of(), netsAt(point));
          }
        });
  }

  /** Where wires end. */
  private List<Point> joints() {
    var joints = new ArrayList<Point>();
    for (Wire wire : drawing.wires()) {
      joints.add(wire.from());
      joints.add(wire.to());
    }
    ends().forEach(end -> joints.add(end.at()));
    return joints;
  }

  private List<String> netsAt(Point point) {
    return drawing.wires().stream()
        .filter(wire -> Lines.on(point, wire))
        .map(Wire::net)
        .distinct()
        .toList();
  }

  private int arms(Point point) {
    int arms = 0;
    for (Wire wire : drawing.wires()) {
      if (Lines.on(point, wire)) {
        arms += Lines.inside(point, wire) ? 2 : 1;
      }
    }
    for (End end : ends()) {
      if (end.at().equals(point)) {
        arms++;
      }
    }
    return arms;
  }

  private void noEndIsLoose() {
    for (Wire wire : drawing.wires()) {
      for (Point end : List.of(wire.from(), wire.to())) {
        boolean mark = drawing.marks().stream().anyMatch(m -> m.at().equals(end));
        if (!mark && arms(end) < 2) {
          faults.add("loose-end", List.of(), List.of(wire.net()));
        }
      }
    }
    for (Mark mark : drawing.marks()) {
      if (arms(mark.at()) < 1) {
        faults.add("loose-mark", List.of(), List.of(mark.net()));
      }
    }
  }

  private List<End> ends() {
    return drawing.figures().stream().flatMap(figure -> figure.ends().stream()).toList();
  }
}
