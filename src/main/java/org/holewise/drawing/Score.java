package org.holewise.drawing;

import java.util.List;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawing.Wire;
import org.holewise.drawing.sheet.Point;

/** How good a drawing looks: less is better. Crossings, then bends, then length and size. */
final class Score {
  private static final double CROSSING = 40;
  private static final double BEND = 8;
  private static final double MARK = 22;

  private Score() {}

  static double of(Drawing drawing) {
    List<Wire> wires = drawing.wires();
    double score = MARK * drawing.marks().size();
    double length = 0;
    for (int i = 0; i < wires.size(); i++) {
      Wire a = wires.get(i);
      length += Math.abs(a.to().x() - a.from().x()) + Math.abs(a.to().y() - a.from().y());
      for (int j = 0; j < i; j++) {
        Wire b = wires.get(j);
        score += bends(a, b) * BEND + (crosses(a, b) ? CROSSING : 0);
      }
    }
    return score + length / 30 + (drawing.frame().width() + drawing.frame().height()) / 20;
  }

  static long crossings(Drawing drawing) {
    List<Wire> wires = drawing.wires();
    long crossings = 0;
    for (int i = 0; i < wires.size(); i++) {
      for (int j = 0; j < i; j++) {
        crossings += crosses(wires.get(i), wires.get(j)) ? 1 : 0;
      }
    }
    return crossings;
  }

  private static int bends(Wire a, Wire b) {
    boolean shared =
        a.from().equals(b.from())
            || a.from().equals(b.to())
            || a.to().equals(b.from())
            || a.to().equals(b.to());
    return shared && level(a) != level(b) ? 1 : 0;
  }

  private static boolean level(Wire wire) {
    return wire.from().y() == wire.to().y();
  }

  private static boolean crosses(Wire a, Wire b) {
    if (level(a) == level(b) || a.net().equals(b.net())) {
      return false;
    }
    Wire flat = level(a) ? a : b;
    Wire tall = level(a) ? b : a;
    Point p = new Point(tall.from().x(), flat.from().y());
    return within(flat.from().x(), p.x(), flat.to().x())
        && within(tall.from().y(), p.y(), tall.to().y());
  }

  private static boolean within(int a, int x, int b) {
    return Math.min(a, b) < x && x < Math.max(a, b);
  }
}
