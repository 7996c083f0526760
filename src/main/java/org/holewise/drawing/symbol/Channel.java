package org.holewise.drawing.symbol;

import java.util.List;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Point;
import org.holewise.drawing.sheet.SymbolStyle;

/**
 * The forms of transistors and potentiometers: a way from top to bottom, acted on from the side.
 */
record Channel(SymbolStyle style) {

  private static Form form(String top, String side, String bottom, Area body, Shape shape) {
    return new Form(
        Form.Manner.CHANNEL,
        List.of(
            new Form.Port(top, new Point(0, -30), new Point(0, (int) body.y())),
            new Form.Port(side, new Point(-30, 0), new Point((int) body.x(), 0)),
            new Form.Port(bottom, new Point(0, 30), new Point(0, (int) body.bottom()))),
        body,
        List.of(),
        pen -> {
          pen.lines(0, -30, 0, body.y()).lines(0, 30, 0, body.bottom());
          pen.lines(-30, 0, body.x(), 0).stroke("line");
          shape.draw(pen);
        });
  }

  private interface Shape {
    void draw(Pen pen);
  }

  /** Collector on top. */
  Form bipolar(boolean npn) {
    return form(
        "c",
        "b",
        "e",
        Area.between(-22, -17, 12, 17),
        pen -> {
          pen.circle(-5, 0, 17).stroke("thin");
          pen.lines(-22, 0, -11, 0).lines(-11, -5, 0, -14, 0, -17).stroke("line");
          pen.lines(-11, 5, 0, 14, 0, 17).stroke("line");
          pen.lines(-11, -10, -11, 10).stroke("heavy");
          if (npn) {
            pen.head(-0.8, 13.4, 11, 9, 7).stroke("solid");
          } else {
            pen.head(-10, 5.8, -11, -9, 7).stroke("solid");
          }
        });
  }

  /** Drain on top, the gate's lead at its middle. */
  Form mosfet(boolean nChannel) {
    return form(
        "d",
        "g",
        "s",
        Area.between(-22, -17, 12, 17),
        pen -> {
          pen.circle(-5, 0, 17).stroke("thin");
          pen.lines(-22, 0, -15, 0).lines(-15, -9, -15, 9).stroke("line");
          pen.lines(-10, -11.5, -10, -5.5).lines(-10, -3, -10, 3).lines(-10, 5.5, -10, 11.5);
          pen.stroke("line");
          pen.lines(-10, -8.5, 0, -8.5, 0, -17).lines(-10, 8.5, 0, 8.5, 0, 17);
          pen.lines(-10, 0, 0, 0, 0, 8.5).stroke("line");
          if (nChannel) {
            pen.head(-9.5, 0, -1, 0, 6).stroke("solid");
          } else {
            pen.head(-1, 0, 1, 0, 6).stroke("solid");
          }
        });
  }

  /** Pin 2 on top, as when it is joined to the supply. */
  Form potentiometer() {
    return form(
        "2",
        "w",
        "1",
        Area.between(-8, -15, 8, 15),
        pen -> {
          Pen body = pen;
          if (style == SymbolStyle.ANSI) {
            body.lines(0, -15, 6, -12.5, -6, -7.5, 6, -2.5, -6, 2.5, 6, 7.5, -6, 12.5, 0, 15)
                .stroke("line");
          } else {
            body.box(-6, -15, 6, 15).stroke("line");
          }
          pen.head(-6.5, 0, 1, 0, 7).stroke("solid");
          pen.lines(-12, 0, -8, 0).stroke("line");
        });
  }
}
