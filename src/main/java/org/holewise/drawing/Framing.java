package org.holewise.drawing;

import java.util.List;
import java.util.stream.Stream;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawing.Dot;
import org.holewise.drawing.sheet.Drawing.End;
import org.holewise.drawing.sheet.Drawing.Figure;

/** Puts a frame round all that was drawn. */
final class Framing {
  private Framing() {}

  static Drawing framed(Drawing drawing, double margin) {
    Area all =
        Stream.of(
                drawing.figures().stream().map(Figure::body),
                drawing.figures().stream()
                    .flatMap(figure -> figure.ends().stream())
                    .map(End::at)
                    .map(at -> new Area(at.x(), at.y(), 0, 0)),
                drawing.wires().stream()
                    .map(w -> Area.between(w.from().x(), w.from().y(), w.to().x(), w.to().y())),
                drawing.marks().stream().map(Drawing.Mark::body),
                drawing.dots().stream().map(Dot::at).map(at -> new Area(at.x(), at.y(), 0, 0)),
                drawing.texts().stream().map(Drawing.Text::extent))
            .flatMap(areas -> areas)
            .reduce(Area::with)
            .orElseThrow()
            .grown(margin);
    Area frame =
        Area.between(
            Math.floor(all.x()),
            Math.floor(all.y()),
            Math.ceil(all.right()),
            Math.ceil(all.bottom()));
    return new Drawing(
        drawing.style(),
        frame,
        drawing.figures(),
        drawing.wires(),
        drawing.dots(),
        drawing.marks(),
        List.copyOf(drawing.texts()));
  }
}
