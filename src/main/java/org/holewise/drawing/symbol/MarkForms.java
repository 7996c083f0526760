package org.holewise.drawing.symbol;

import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing.End;
import org.holewise.drawing.sheet.Drawing.Mark;
import org.holewise.drawing.sheet.Point;

/** The symbols that stand for a net: ground, a bar for a supply, a ring for an open terminal. */
public final class MarkForms {
  private static final double RING = 3;

  private MarkForms() {}

  /** Earth lines below a point. */
  public static Mark ground(String net, Point at) {
    var pen = new Pen(at, Turn.NONE);
    pen.lines(-9, 0, 9, 0).lines(-6, 4, 6, 4).lines(-2.5, 8, 2.5, 8).stroke("line");
    return new Mark(
        net, "ground", at, Area.between(-9, 0, 9, 8).moved(at.x(), at.y()), pen.strokes());
  }

  /** A bar across a point. */
  public static Mark supply(String net, Point at) {
    var pen = new Pen(at, Turn.NONE);
    pen.lines(-9, 0, 9, 0).stroke("line");
    return new Mark(
        net, "supply", at, Area.between(-9, -0.5, 9, 0.5).moved(at.x(), at.y()), pen.strokes());
  }

  /** A ring beyond the end of a lead. */
  public static Mark terminal(End end) {
    Point at = end.at();
    int dx = Integer.signum(at.x() - end.root().x());
    int dy = Integer.signum(at.y() - end.root().y());
    var pen = new Pen(at, Turn.NONE);
    pen.circle(RING * dx, RING * dy, RING).stroke("ground");
    Area body = Area.between(-RING, -RING, RING, RING).moved(RING * dx, RING * dy);
    return new Mark(end.net(), "terminal", at, body.moved(at.x(), at.y()), pen.strokes());
  }
}
