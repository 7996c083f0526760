package org.holewise.drawing.symbol;

import java.util.ArrayList;
import java.util.List;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Point;
import org.holewise.drawing.sheet.TextSize;

/** Half of a dual op-amp or comparator: a triangle, with supply pins or without. */
final class Triangle {
  private Triangle() {}

  /**
   * One half.
   *
   * @param minus, plus, out numbers of its pins
   * @param plusOnTop whether its + input is the upper one
   * @param supply numbers of the top and bottom supply pins, where it shows them
   */
  static Form of(String minus, String plus, String out, List<String> supply, boolean plusOnTop) {
    int sign = plusOnTop ? -1 : 1;
    var ports = new ArrayList<Form.Port>();
    ports.add(new Form.Port(minus, new Point(-40, -20 * sign), new Point(-25, -20 * sign)));
    ports.add(new Form.Port(plus, new Point(-40, 20 * sign), new Point(-25, 20 * sign)));
    ports.add(new Form.Port(out, new Point(40, 0), new Point(30, 0)));
    var texts = new ArrayList<Form.Inner>();
    texts.add(new Form.Inner(minus, TextSize.NUMBER, -32, -4 - 20 * sign, "middle"));
    texts.add(new Form.Inner(plus, TextSize.NUMBER, -32, -4 + 20 * sign, "middle"));
    texts.add(new Form.Inner(out, TextSize.NUMBER, 32, -4, "start"));
    for (int i = 0; i < supply.size(); i++) {
      int way = i == 0 ? -1 : 1;
      ports.add(new Form.Port(supply.get(i), new Point(0, 40 * way), new Point(0, 20 * way)));
      texts.add(new Form.Inner(supply.get(i), TextSize.NUMBER, 4, i == 0 ? -26 : 32, "start"));
    }
    return new Form(
        Form.Manner.BLOCK,
        ports,
        Area.between(-25, -33, 30, 33),
        List.of(
            Area.between(-25, -33, -12, 33),
            Area.between(-12, -26, 2, 26),
            Area.between(2, -18, 16, 18),
            Area.between(16, -10, 30, 10)),
        texts,
        pen -> {
          pen.lines(-25, -33, 30, 0, -25, 33).close().stroke("line");
          pen.lines(-40, -20, -25, -20).lines(-40, 20, -25, 20).lines(30, 0, 40, 0);
          for (int i = 0; i < supply.size(); i++) {
            int way = i == 0 ? -1 : 1;
            pen.lines(0, 40 * way, 0, 18 * way);
          }
          pen.stroke("line");
          pen.lines(-21, -20, -14, -20).lines(-21, 20, -14, 20);
          pen.lines(-17.5, 20 * sign - 3.5, -17.5, 20 * sign + 3.5);
          pen.stroke("thin");
        });
  }
}
