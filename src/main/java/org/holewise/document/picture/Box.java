package org.holewise.document.picture;

/** An upright rectangle of the drawing (px). */
public record Box(double x, double y, double width, double height) {
  public Box {
    x = Spot.tenths(x);
    y = Spot.tenths(y);
    width = Spot.tenths(width);
    height = Spot.tenths(height);
  }

  static Box around(Spot centre, double width, double height) {
    return new Box(centre.x() - width / 2, centre.y() - height / 2, width, height);
  }

  /** The rectangle with these two corners, grown on every side. */
  static Box between(Spot one, Spot other, double grown) {
    double x = Math.min(one.x(), other.x()) - grown;
    double y = Math.min(one.y(), other.y()) - grown;
    return new Box(
        x, y, Math.abs(one.x() - other.x()) + 2 * grown, Math.abs(one.y() - other.y()) + 2 * grown);
  }

  public Spot centre() {
    return new Spot(x + width / 2, y + height / 2);
  }

  /** The area that two share; 0 where they only touch. */
  public double shared(Box other) {
    double w = Math.min(x + width, other.x + other.width) - Math.max(x, other.x);
    double h = Math.min(y + height, other.y + other.height) - Math.max(y, other.y);
    return w > 0 && h > 0 ? w * h : 0;
  }

  boolean inside(Box other) {
    return x >= other.x
        && y >= other.y
        && x + width <= other.x + other.width
        && y + height <= other.y + other.height;
  }
}
