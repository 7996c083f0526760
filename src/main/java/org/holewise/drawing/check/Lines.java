package org.holewise.drawing.check;

import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing.Wire;
import org.holewise.drawing.sheet.Point;

/** Level and upright pieces of wire against points and rectangles. */
final class Lines {
  private Lines() {}

  static boolean level(Wire wire) {
    return wire.from().y() == wire.to().y();
  }

  /** Whether a point is on a wire, its ends included. */
  static boolean on(Point p, Wire wire) {
    return between(wire.from().x(), p.x(), wire.to().x())
        && between(wire.from().y(), p.y(), wire.to().y());
  }

  static boolean inside(Point p, Wire wire) {
    return on(p, wire) && !p.equals(wire.from()) && !p.equals(wire.to());
  }

  private static boolean between(int a, int x, int b) {
    return Math.min(a, b) <= x && x <= Math.max(a, b);
  }

  /** Whether two share a point, a straight crossing left out. */
  static boolean touch(Wire a, Wire b) {
    if (level(a) == level(b)) {
      return on(a.from(), b) || on(a.to(), b) || on(b.from(), a) || on(b.to(), a);
    }
    Wire flat = level(a) ? a : b;
    Wire tall = level(a) ? b : a;
    Point p = new Point(tall.from().x(), flat.from().y());
    return on(p, flat) && on(p, tall) && !(inside(p, flat) && inside(p, tall));
  }

  /** Whether two cross straight. */
  static boolean cross(Wire a, Wire b) {
    if (level(a) == level(b)) {
      return false;
    }
    Wire flat = level(a) ? a : b;
    Wire tall = level(a) ? b : a;
    Point p = new Point(tall.from().x(), flat.from().y());
    return inside(p, flat) && inside(p, tall);
  }

  /** What a wire covers, drawn as a thin line. */
  static Area area(Wire wire) {
    return area(wire.from(), wire.to());
  }

  static Area area(Point a, Point b) {
    return Area.between(a.x(), a.y(), b.x(), b.y()).grown(0.75);
  }
}
