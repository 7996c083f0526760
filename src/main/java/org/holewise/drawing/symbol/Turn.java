package org.holewise.drawing.symbol;

import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Point;

/**
 * How a symbol stands: seen in a mirror or not, then turned by quarters clockwise.
 *
 * @param quarters 0 to 3
 * @param mirror left and right exchanged first
 */
public record Turn(int quarters, boolean mirror) {
  public static final Turn NONE = new Turn(0, false);

  /** First pin of a two-ended symbol on top. */
  public static final Turn DOWN = new Turn(1, false);

  /** First pin of a two-ended symbol at the bottom. */
  public static final Turn UP = new Turn(3, false);

  public static final Turn MIRRORED = new Turn(0, true);

  /** Top and bottom exchanged. */
  public static final Turn FLIPPED = new Turn(2, true);

  public static final Turn HALF = new Turn(2, false);

  double x(double x, double y) {
    double mx = mirror ? -x : x;
    return switch (quarters) {
      case 0 -> mx;
      case 1 -> -y;
      case 2 -> -mx;
      default -> y;
    };
  }

  double y(double x, double y) {
    double mx = mirror ? -x : x;
    return switch (quarters) {
      case 0 -> y;
      case 1 -> mx;
      case 2 -> -y;
      default -> -mx;
    };
  }

  public Point of(Point point) {
    return new Point((int) x(point.x(), point.y()), (int) y(point.x(), point.y()));
  }

  public Area of(Area area) {
    return Area.between(
        x(area.x(), area.y()),
        y(area.x(), area.y()),
        x(area.right(), area.bottom()),
        y(area.right(), area.bottom()));
  }
}
