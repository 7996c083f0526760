package org.holewise.drawing.symbol;

import java.util.ArrayList;
import java.util.List;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Point;
import org.holewise.drawing.sheet.TextSize;
import org.holewise.engine.part.Leg;

/**
 * A chip as a rectangle with the numbers and names of its pins on four sides.
 *
 * @param pitch between the pins of a side, a multiple of 10
 * @param digit whether it shows a digit of seven segments
 */
record ChipBlock(
    List<Leg> left, List<Leg> right, List<Leg> top, List<Leg> bottom, int pitch, boolean digit) {
  private static final int LEAD = 20;
  private static final int ABREAST = 40;

  Form form() {
    int rows = Math.max(Math.max(left.size(), right.size()), 1);
    int first = -(rows - 1) * pitch / 20 * 10;
    int up = first - (top.isEmpty() ? 20 : 30);
    int down = first + (rows - 1) * pitch + (bottom.isEmpty() ? 20 : 30);
    int half = half();
    var ports = new ArrayList<Form.Port>();
    var texts = new ArrayList<Form.Inner>();
    for (int i = 0; i < left.size(); i++) {
      side(left.get(i), -1, half, first + i * pitch, ports, texts);
    }
    for (int i = 0; i < right.size(); i++) {
      side(right.get(i), 1, half, first + i * pitch, ports, texts);
    }
    ends(top, -1, up, ports, texts);
    ends(bottom, 1, down, ports, texts);
    return new Form(
        Form.Manner.BLOCK,
        ports,
        Area.between(-half, up, half, down),
        texts,
        pen -> {
          pen.box(-half, up, half, down).stroke("line");
          ports.forEach(p -> pen.lines(p.at().x(), p.at().y(), p.root().x(), p.root().y()));
          pen.stroke("line");
          if (digit) {
            digit(pen);
          }
        });
  }

  private int half() {
    double rows = widest(left) + widest(right) + 24 + (digit ? 40 : 0);
    double need = Math.max(rows, Math.max(abreast(top), abreast(bottom)));
    return (int) Math.ceil(Math.max(need, 60) / 20) * 10;
  }

  private static double widest(List<Leg> legs) {
    return legs.stream().mapToDouble(leg -> TextSize.PIN.width(leg.name())).max().orElse(0);
  }

  private static double abreast(List<Leg> legs) {
    return legs.isEmpty() ? 0 : legs.size() * ABREAST + 10;
  }

  private static void side(
      Leg leg, int way, int half, int y, List<Form.Port> ports, List<Form.Inner> texts) {
    ports.add(
        new Form.Port(leg.pin(), new Point(way * (half + LEAD), y), new Point(way * half, y)));
    texts.add(
        new Form.Inner(
            leg.name(), TextSize.PIN, way * (half - 5), y + 3.5, way < 0 ? "start" : "end"));
    if (!leg.name().equals(leg.pin())) {
      texts.add(
          new Form.Inner(
              leg.pin(), TextSize.NUMBER, way * (half + 4), y - 4, way < 0 ? "end" : "start"));
    }
  }

  private static void ends(
      List<Leg> legs, int way, int edge, List<Form.Port> ports, List<Form.Inner> texts) {
    int from = -(legs.size() - 1) * ABREAST / 2;
    for (int i = 0; i < legs.size(); i++) {
      Leg leg = legs.get(i);
      int x = from + i * ABREAST;
      ports.add(new Form.Port(leg.pin(), new Point(x, edge + way * LEAD), new Point(x, edge)));
      texts.add(
          new Form.Inner(leg.name(), TextSize.PIN, x, way < 0 ? edge + 13 : edge - 5, "middle"));
      if (!leg.name().equals(leg.pin())) {
        double y = way < 0 ? edge - 5 : edge + 12;
        texts.add(new Form.Inner(leg.pin(), TextSize.NUMBER, x + 4, y, "start"));
      }
    }
  }

  private static void digit(Pen pen) {
    pen.lines(4, -20, 24, -20, 24, 20, 4, 20).close().lines(4, 0, 24, 0).stroke("heavy");
  }
}
