package org.holewise.document.picture;

/**
 * Writes the {@code d} of an SVG path in a frame of its own: moved to a spot and turned so that its
 * x axis runs along a direction.
 */
final class Pen {
  private final Spot origin;
  private final double cos;
  private final double sin;
  private final StringBuilder path = new StringBuilder();

  private Pen(Spot origin, double cos, double sin) {
    this.origin = origin;
    this.cos = cos;
    this.sin = sin;
  }

  /** Unturned, from the corner of the drawing. */
  static Pen plain() {
    return new Pen(new Spot(0, 0), 1, 0);
  }

  /** With its x axis from one spot towards another; unturned where they are the same. */
  static Pen at(Spot origin, Spot from, Spot towards) {
    double length = from.distance(towards);
    return length == 0
        ? new Pen(origin, 1, 0)
        : new Pen(origin, (towards.x() - from.x()) / length, (towards.y() - from.y()) / length);
  }

  /** Another in the same frame. */
  Pen fresh() {
    return new Pen(origin, cos, sin);
  }

  /** A point of this frame in the drawing. */
  Spot out(double x, double y) {
    return origin.plus(x * cos - y * sin, x * sin + y * cos);
  }

  /** A point of the drawing in this frame. */
  Spot in(Spot spot) {
    double dx = spot.x() - origin.x();
    double dy = spot.y() - origin.y();
    return new Spot(dx * cos + dy * sin, dy * cos - dx * sin);
  }

  Pen move(double x, double y) {
    return put("M", out(x, y));
  }

  Pen line(double x, double y) {
    return put("L", out(x, y));
  }

  Pen arc(double radius, boolean clockwise, double x, double y) {
    path.append("A").append(number(radius)).append(' ').append(number(radius));
    return put(clockwise ? " 0 0 1 " : " 0 0 0 ", out(x, y));
  }

  Pen curve(double x1, double y1, double x2, double y2, double x, double y) {
    put("C", out(x1, y1));
    put(" ", out(x2, y2));
    return put(" ", out(x, y));
  }

  Pen close() {
    path.append("Z");
    return this;
  }

  Pen circle(double x, double y, double radius) {
    return move(x - radius, y)
        .arc(radius, true, x + radius, y)
        .arc(radius, true, x - radius, y)
        .close();
  }

  /** A rectangle about the origin, corners rounded. */
  Pen rectangle(double halfLength, double halfWidth, double corner) {
    double l = halfLength;
    double w = halfWidth;
    return move(corner - l, -w)
        .line(l - corner, -w)
        .arc(corner, true, l, corner - w)
        .line(l, w - corner)
        .arc(corner, true, l - corner, w)
        .line(corner - l, w)
        .arc(corner, true, -l, w - corner)
        .line(-l, corner - w)
        .arc(corner, true, corner - l, -w)
        .close();
  }

  String path() {
    return path.toString();
  }

  /** To a tenth of a pixel, without a point where it is whole. */
  static String number(double px) {
    double tenths = Spot.tenths(px);
    long whole = (long) tenths;
    return whole == tenths ? Long.toString(whole) : Double.toString(tenths);
  }

  private Pen put(String command, Spot to) {
    path.append(command).append(number(to.x())).append(' ').append(number(to.y()));
    return this;
  }
}
