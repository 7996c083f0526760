package org.holewise.drawing.symbol;

import java.util.ArrayList;
import java.util.List;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Point;
import org.holewise.drawing.sheet.SymbolStyle;
import org.holewise.engine.part.Part;

/** The forms of parts with two ends. */
record TwoEnded(SymbolStyle style) {
  private boolean ansi() {
    return style == SymbolStyle.ANSI;
  }

  private static Area about(double halfLength, double up, double down) {
    return Area.between(-halfLength, -up, halfLength, down);
  }

  private static void leads(Pen pen, double half) {
    pen.lines(-30, 0, -half, 0).lines(half, 0, 30, 0).stroke("line");
  }

  Form resistor() {
    return Form.twoEnded("1", "2", about(15, 6, 6), this::resistance);
  }

  private void resistance(Pen pen) {
    leads(pen, 15);
    resistanceBody(pen);
  }

  void resistanceBody(Pen pen) {
    if (ansi()) {
      pen.lines(-15, 0, -12.5, -6, -7.5, 6, -2.5, -6, 2.5, 6, 7.5, -6, 12.5, 6, 15, 0)
          .stroke("line");
    } else {
      pen.box(-15, -6, 15, 6).stroke("line");
    }
  }

  Form photoresistor() {
    return Form.twoEnded(
        "1",
        "2",
        about(15, 20, 6),
        List.of(about(15, 6, 6), Area.between(-14, -20, 3, -7)),
        pen -> {
          resistance(pen);
          arrow(pen, -13, -20, -6, -9);
          arrow(pen, -5, -20, 2, -9);
        });
  }

  private static void arrow(Pen pen, double x1, double y1, double x2, double y2) {
    pen.lines(x1, y1, x2, y2).stroke("thin");
    pen.head(x2, y2, x2 - x1, y2 - y1, 5).stroke("solid");
  }

  Form thermistor() {
    return Form.twoEnded(
        "1",
        "2",
        about(18, 12, 12),
        pen -> {
          pen.lines(-18, 0, -15, 0).lines(15, 0, 18, 0).stroke("line");
          resistance(pen);
          pen.lines(-18, 12, -12, 12, 12, -12).stroke("thin");
        });
  }

  Form capacitor(String a, String b, boolean polar) {
    return Form.twoEnded(
        a,
        b,
        about(polar ? 10 : 3, polar ? 11 : 10, 10),
        pen -> {
          pen.lines(-30, 0, -3, 0).lines(3, 0, 30, 0).lines(-3, -10, -3, 10).stroke("line");
          if (polar && ansi()) {
            pen.move(7, -10).arc(14, false, 7, 10).stroke("line");
          } else {
            pen.lines(3, -10, 3, 10).stroke("line");
          }
          if (polar) {
            pen.lines(-10, -8, -5.5, -8).lines(-7.8, -10.3, -7.8, -5.8).stroke("thin");
          }
        });
  }

  Form inductor() {
    return Form.twoEnded(
        "1",
        "2",
        about(20, 6, 4),
        pen -> {
          leads(pen, 20);
          pen.move(-20, 0);
          for (int x = -10; x <= 20; x += 10) {
            pen.arc(5, true, x, 0);
          }
          pen.stroke("line");
        });
  }

  Form diode() {
    return Form.twoEnded("a", "k", about(8, 8, 8), pen -> junction(pen, 0));
  }

  /** A diode; {@code bends} 1 with one bend of its bar, 2 with both. */
  private void junction(Pen pen, int bends) {
    if (ansi()) {
      leads(pen, 8);
      pen.lines(-8, -8, 8, 0, -8, 8).close().stroke("solid");
    } else {
      pen.lines(-30, 0, 30, 0).stroke("line");
      pen.lines(-8, -8, 8, 0, -8, 8).close().stroke("line");
    }
    switch (bends) {
      case 0 -> pen.lines(8, -8, 8, 8);
      case 1 -> pen.lines(3, -8, 8, -8, 8, 8);
      default -> pen.lines(12, -11, 8, -8, 8, 8, 4, 11);
    }
    pen.stroke("line");
  }

  Form zener() {
    return Form.twoEnded(
        "a",
        "k",
        ansi() ? about(12, 11, 11) : about(8, 8, 8),
        pen -> junction(pen, ansi() ? 2 : 1));
  }

  Form led() {
    return Form.twoEnded(
        "a",
        "k",
        Area.between(-9, -22, 15, 8),
        List.of(Area.between(-9, -8, 9, 8), Area.between(-2, -22, 15, -8)),
        pen -> {
          junction(pen, 0);
          arrow(pen, -1, -9, 6, -20);
          arrow(pen, 6, -9, 13, -20);
        });
  }

  Form battery() {
    return Form.twoEnded(
        "+",
        "-",
        about(9, 13, 13),
        pen -> {
          leads(pen, 9);
          pen.lines(-9, -13, -9, 13).lines(3, -13, 3, 13).stroke("line");
          pen.lines(-3, -6, -3, 6).lines(9, -6, 9, 6).stroke("heavy");
          pen.lines(-3, 0, 3, 0).stroke("thin");
          pen.lines(-17, -9, -12, -9).lines(-14.5, -11.5, -14.5, -6.5).stroke("thin");
        });
  }

  Form source(String plus, String minus) {
    return Form.twoEnded(plus, minus, about(15, 15, 15), pen -> cell(pen, 0));
  }

  /** A round source whose plus is left, its middle at {@code x}. */
  static void cell(Pen pen, double x) {
    pen.circle(x, 0, 15).stroke("line");
    pen.lines(x - 30, 0, x - 15, 0).lines(x + 15, 0, x + 30, 0).stroke("line");
    pen.lines(x - 10.5, 0, x - 4.5, 0).lines(x - 7.5, -3, x - 7.5, 3).stroke("thin");
    pen.lines(x + 7.5, -3, x + 7.5, 3).stroke("thin");
  }

  Form generator(Part part) {
    String wave = part.fields().text("wave").orElse("sine");
    return Form.twoEnded(
        "+",
        "-",
        about(15, 15, 15),
        pen -> {
          pen.circle(0, 0, 15).stroke("line");
          leads(pen, 15);
          Pen in = pen.upright(0, 0);
          switch (wave) {
            case "square" -> in.lines(-9, 0, -9, -5, 0, -5, 0, 5, 9, 5, 9, 0);
            case "triangle" -> in.lines(-9, 0, -4.5, -6, 4.5, 6, 9, 0);
            default -> in.move(-9, 0).arc(5, true, 0, 0).arc(5, false, 9, 0);
          }
          pen.add(in.stroke("line"));
          pen.lines(-22, -9, -17, -9).lines(-19.5, -11.5, -19.5, -6.5).stroke("thin");
        });
  }

  Form contact(boolean closed) {
    return Form.twoEnded(
        "1",
        "2",
        closed ? about(12, 5, 5) : about(12, 14, 5),
        pen -> {
          leads(pen, 12);
          pen.lines(-12, 0, closed ? 12 : 10, closed ? 0 : -12).stroke("line");
          pen.circle(-12, 0, 2.2).circle(12, 0, 2.2).stroke("ground");
        });
  }

  /** A push button; a twin that is wired too comes down from its lead. */
  Form button(boolean pressed, List<String> pins) {
    double bar = pressed ? -2.5 : -9;
    List<Form.Port> ports = new ArrayList<>();
    for (String pin : pins) {
      boolean twin = pin.endsWith("a") && pins.contains(pin.substring(0, 1));
      int side = pin.startsWith("1") ? -1 : 1;
      ports.add(
          twin
              ? new Form.Port(pin, new Point(20 * side, 20), new Point(20 * side, 10))
              : new Form.Port(pin, new Point(30 * side, 0), new Point(20 * side, 0)));
    }
    boolean twins = ports.stream().anyMatch(port -> port.at().y() > 0);
    return new Form(
        twins ? Form.Manner.BLOCK : Form.Manner.TWO_ENDED,
        ports,
        Area.between(-20, -18, 20, twins ? 10 : 5),
        List.of(),
        pen -> {
          pen.lines(-20, 0, -12, 0).lines(12, 0, 20, 0).stroke("line");
          for (Form.Port port : ports) {
            pen.lines(port.at().x(), port.at().y(), port.root().x(), port.root().y());
            pen.lines(port.root().x(), port.root().y(), port.root().x(), 0).stroke("line");
            if (port.at().y() > 0) {
              pen.circle(port.at().x(), 0, 3).stroke("solid");
            }
          }
          pen.lines(-14, bar, 14, bar).lines(0, bar, 0, bar - 7).lines(-5, bar - 7, 5, bar - 7);
          pen.stroke("line");
          pen.circle(-12, 0, 2.2).circle(12, 0, 2.2).stroke("ground");
        });
  }

  /** A box of two ends with nothing known inside: what a kind without a form of its own has. */
  Form unknown(List<String> pins) {
    return Form.twoEnded(
        pins.get(0),
        pins.get(1),
        about(20, 10, 10),
        pen -> {
          leads(pen, 20);
          pen.box(-20, -10, 20, 10).stroke("line");
          pen.circle(-15, 0, 1.5).stroke("solid");
        });
  }
}
