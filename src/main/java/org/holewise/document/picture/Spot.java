package org.holewise.document.picture;

/** A point of the drawing, from its upper left corner (px). */
public record Spot(double x, double y) {
  public Spot {
    x = tenths(x);
    y = tenths(y);
  }

  /** Drawings need no more, and short numbers read better. */
  static double tenths(double px) {
    return Math.round(px * 10) / 10.0;
  }

  Spot plus(double dx, double dy) {
    return new Spot(x + dx, y + dy);
  }

  double distance(Spot other) {
    return Math.sqrt((x - other.x) * (x - other.x) + (y - other.y) * (y - other.y));
  }

  static Spot middle(Iterable<Spot> spots) {
    double x = 0;
    double y = 0;
    int n = 0;
    for (Spot spot : spots) {
      x += spot.x;
      y += spot.y;
      n++;
    }
    return new Spot(x / n, y / n);
  }
}
