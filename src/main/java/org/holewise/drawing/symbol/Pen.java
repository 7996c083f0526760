package org.holewise.drawing.symbol;

import java.util.ArrayList;
import java.util.List;
import org.holewise.drawing.sheet.Drawing.Stroke;
import org.holewise.drawing.sheet.Point;

/** Writes strokes in a symbol's own frame, moved and turned as the symbol stands. */
public final class Pen {
  private final Point origin;
  private final Turn turn;
  private final List<Stroke> strokes = new ArrayList<>();
  private StringBuilder path = new StringBuilder();

  public Pen(Point origin, Turn turn) {
    this.origin = origin;
    this.turn = turn;
  }

  /** The same place, but always upright: for what must not be turned. */
  Pen upright(double x, double y) {
    var pen =
        new Pen(
            new Point(
                origin.x() + (int) Math.round(turn.x(x, y)),
                origin.y() + (int) Math.round(turn.y(x, y))),
            Turn.NONE);
    return pen;
  }

  Pen move(double x, double y) {
    return put("M", x, y);
  }

  Pen line(double x, double y) {
    return put("L", x, y);
  }

  Pen lines(double... xy) {
    move(xy[0], xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      line(xy[i], xy[i + 1]);
    }
    return this;
  }

  Pen arc(double radius, boolean clockwise, double x, double y) {
    boolean sense = clockwise != turn.mirror();
    path.append('A').append(number(radius)).append(' ').append(number(radius));
    return put(sense ? " 0 0 1 " : " 0 0 0 ", x, y);
  }

  Pen circle(double x, double y, double radius) {
    return move(x - radius, y)
        .arc(radius, true, x + radius, y)
        .arc(radius, true, x - radius, y)
        .close();
  }

  Pen box(double x1, double y1, double x2, double y2) {
    return lines(x1, y1, x2, y1, x2, y2, x1, y2).close();
  }

  Pen close() {
    path.append('Z');
    return this;
  }

  /** An arrow head with its tip at a point, pointing along (dx, dy). */
  Pen head(double x, double y, double dx, double dy, double size) {
    double length = Math.sqrt(dx * dx + dy * dy);
    double ux = dx / length * size;
    double uy = dy / length * size;
    return lines(
            x, y, x - ux - uy * 0.42, y - uy + ux * 0.42, x - ux + uy * 0.42, y - uy - ux * 0.42)
        .close();
  }

  /** Ends what was written since the last stroke. */
  Pen stroke(String style) {
    strokes.add(new Stroke(style, path.toString()));
    path = new StringBuilder();
    return this;
  }

  Pen add(Pen other) {
    strokes.addAll(other.strokes);
    return this;
  }

  public List<Stroke> strokes() {
    return List.copyOf(strokes);
  }

  private Pen put(String command, double x, double y) {
    path.append(command)
        .append(number(origin.x() + turn.x(x, y)))
        .append(' ')
        .append(number(origin.y() + turn.y(x, y)));
    return this;
  }

  /** To a tenth, without a point where it is whole. */
  static String number(double px) {
    double tenths = Math.round(px * 10) / 10.0;
    long whole = (long) tenths;
    return whole == tenths ? Long.toString(whole) : Double.toString(tenths);
  }
}
