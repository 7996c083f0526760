package org.holewise.drawing.sheet;

/** An upright rectangle of the drawing (px). */
public record Area(double x, double y, double width, double height) {

  /** The rectangle with these two opposite corners. */
  public static Area between(double x1, double y1, double x2, double y2) {
    return new Area(Math.min(x1, x2), Math.min(y1, y2), Math.abs(x2 - x1), Math.abs(y2 - y1));
  }

  public double right() {
    return x + width;
  }

  public double bottom() {
    return y + height;
  }

  public Area moved(double dx, double dy) {
    return new Area(x + dx, y + dy, width, height);
  }

  public Area grown(double by) {
    return new Area(x - by, y - by, width + 2 * by, height + 2 * by);
  }

  /** The smallest rectangle round both. */
  public Area with(Area other) {
    return between(
        Math.min(x, other.x),
        Math.min(y, other.y),
        Math.max(right(), other.right()),
        Math.max(bottom(), other.bottom()));
  }

  /** Whether two share more than an edge. */
  public boolean meets(Area other) {
    return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
  }
}
