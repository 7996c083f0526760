package org.holewise.document.picture;

import java.util.List;
import org.holewise.document.picture.Assembly.Seated;
import org.holewise.document.picture.BoardPicture.Body;
import org.holewise.engine.part.Part;

/**
 * A chip seen from above, as long as its pins and as wide as their rows are apart: a notch at the
 * end of its first pin and a mark beside that pin. In its frame x runs from the end of pin 1 to the
 * other and y across the rows.
 */
record ChipForm(Pen frame, double halfLength, double halfWidth, Spot first) {
  private static final double BEYOND = 9;
  private static final double WITHIN = 6;
  private static final double LEAST = 8;
  private static final double NOTCH = 5;
  private static final double MARK = 2.2;

  /** Leads in the order of the pins, the first one there. */
  static ChipForm of(List<Seated> leads) {
    List<Spot> at = leads.stream().map(Seated::at).toList();
    Spot first = at.get(0);
    Spot along = at.get(Math.max(0, (at.size() - 1) / 2));
    Pen frame = Pen.at(Spot.middle(at), first, along);
    double length = at.stream().mapToDouble(spot -> Math.abs(frame.in(spot).x())).max().orElse(0);
    double width = at.stream().mapToDouble(spot -> Math.abs(frame.in(spot).y())).max().orElse(0);
    return new ChipForm(frame, length + BEYOND, Math.max(LEAST, width - WITHIN), frame.in(first));
  }

  Body body(Part part) {
    Pen outline = frame.fresh().rectangle(halfLength, halfWidth, 2);
    Pen detail = frame.fresh();
    detail.move(-halfLength, -NOTCH).arc(NOTCH, true, -halfLength, NOTCH);
    double side = first.y() < 0 ? -1 : 1;
    detail.circle(first.x(), side * (halfWidth - 2 * MARK), MARK);
    Box extent =
        Box.between(frame.out(-halfLength, -halfWidth), frame.out(halfLength, halfWidth), 1);
    return new Body(part.ref(), part.kind().name(), outline.path(), detail.path(), extent);
  }

  /** Where a lead enters the body. */
  Spot entry(Spot hole) {
    Spot in = frame.in(hole);
    double y = Math.max(1 - halfWidth, Math.min(halfWidth - 1, in.y()));
    return frame.out(in.x(), y);
  }
}
