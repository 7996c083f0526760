package org.holewise.drawing.symbol;

import java.util.List;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing.Text;
import org.holewise.drawing.sheet.Point;

/** The texts inside of symbols and at their leads, upright however the symbol is turned. */
public final class Inside {
  private Inside() {}

  /** What they cover. */
  public static List<Area> extents(Form form, Turn turn, Point at) {
    return texts(form, turn, at, "").stream().map(Text::extent).toList();
  }

  public static List<Text> texts(Form form, Turn turn, Point at, String ref) {
    return form.texts().stream().map(inner -> text(inner, turn, at, ref)).toList();
  }

  private static Text text(Form.Inner inner, Turn turn, Point at, String ref) {
    double middle = inner.baseline() - 0.36 * inner.size().px();
    double x = at.x() + turn.x(inner.x(), middle);
    double y = at.y() + turn.y(inner.x(), middle);
    String anchor = anchor(inner.anchor(), turn);
    double baseline = Math.round((y + 0.36 * inner.size().px()) * 10) / 10.0;
    return new Text(
        inner.text(),
        inner.size(),
        ref,
        "",
        x,
        baseline,
        anchor,
        inner.size().extent(inner.text(), anchor, x, baseline));
  }

  /** A text that began at its place ends there in a mirror; upright it is in the middle. */
  private static String anchor(String anchor, Turn turn) {
    if (turn.quarters() % 2 == 1) {
      return "middle";
    }
    boolean turned = turn.mirror() != (turn.quarters() == 2);
    if (!turned || anchor.equals("middle")) {
      return anchor;
    }
    return anchor.equals("start") ? "end" : "start";
  }
}
