package org.holewise.drawing.symbol;

import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing.Mark;
import org.holewise.drawing.sheet.Point;

/** The symbols that stand for a net: ground, and a bar for a supply. */
public final class MarkForms {
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
}
