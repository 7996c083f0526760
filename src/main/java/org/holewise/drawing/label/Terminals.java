package org.holewise.drawing.label;

import java.util.List;
import java.util.stream.Stream;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing.Mark;
import org.holewise.drawing.sheet.Drawing.Text;
import org.holewise.drawing.sheet.TextSize;

/** Where the name of a terminal may stand. */
final class Terminals {
  private static final double GAP = 4;

  /** From a baseline to the middle of the letters above it. */
  private static final double HALF = 4;

  private static final double HEIGHT = 9;

  private Terminals() {}

  /** Beyond the lead, then over it and under it, then on either side; the best first. */
  static List<Text> names(Mark mark, int dx, int dy) {
    Area ring = mark.body();
    double cx = ring.x() + ring.width() / 2;
    double cy = ring.y() + ring.height() / 2;
    Text left = text(mark, ring.x() - GAP, cy + HALF, "end");
    Text right = text(mark, ring.right() + GAP, cy + HALF, "start");
    Text over = text(mark, cx, ring.y() - GAP, "middle");
    Text under = text(mark, cx, ring.bottom() + GAP + HEIGHT, "middle");
    Text beyond = dx < 0 ? left : dx > 0 ? right : dy < 0 ? over : under;
    String outward = dx < 0 ? "end" : "start";
    double edge = dx < 0 ? ring.right() : ring.x();
    return Stream.of(
            beyond,
            text(mark, edge, ring.y() - GAP, outward),
            text(mark, edge, ring.bottom() + GAP + HEIGHT, outward),
            over,
            under,
            right,
            left)
        .toList();
  }

  private static Text text(Mark mark, double x, double baseline, String anchor) {
    Area extent = TextSize.NET.extent(mark.net(), anchor, x, baseline);
    return new Text(mark.net(), TextSize.NET, "", mark.net(), x, baseline, anchor, extent);
  }
}
