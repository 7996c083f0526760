package org.holewise.document.picture;

import org.holewise.document.picture.BoardPicture.Body;
import org.holewise.engine.part.Part;

/**
 * How a kind of part is drawn on a board, seen from above, in its own frame: x from its first pin
 * to its last, y to the side of its leads where it stands beside them.
 */
enum Form {
  BAR(Sits.BETWEEN, 23, 8) {
    @Override
    void draw(Pen outline, Pen detail, Part part) {
      outline.rectangle(23, 8, 4);
    }
  },
  /** A round dome, flat at the cathode. */
  DOME(Sits.BETWEEN, 13, 13) {
    @Override
    void draw(Pen outline, Pen detail, Part part) {
      outline.move(9, -9.4).arc(13, false, -9.2, -9.2).arc(13, false, -9.2, 9.2);
      outline.arc(13, false, 9, 9.4).close();
      detail.move(-6.4, -4.8).arc(8, false, -6.4, 4.8);
    }
  },
  /** A bar with its band at the cathode. */
  BANDED(Sits.BETWEEN, 19, 7) {
    @Override
    void draw(Pen outline, Pen detail, Part part) {
      outline.rectangle(19, 7, 3);
      detail.move(11, -7).line(11, 7).move(12.5, -7).line(12.5, 7).move(14, -7).line(14, 7);
    }
  },
  LEVER(Sits.BETWEEN, 21, 10) {
    @Override
    void draw(Pen outline, Pen detail, Part part) {
      outline.rectangle(21, 10, 3);
      boolean closed = part.fields().flag("closed", true);
      detail.circle(-11, closed ? 0 : 3, 2).circle(11, closed ? 0 : 3, 2);
      detail.move(-9, closed ? 0 : 2).line(9, closed ? 0 : -6);
    }
  },
  CAP(Sits.OVER, 21, 15) {
    @Override
    void draw(Pen outline, Pen detail, Part part) {
      outline.rectangle(21, 15, 3);
      detail.circle(0, 0, 9);
    }
  },
  /** A small plastic case, flat on the side of its leads. */
  ROUNDED(Sits.BESIDE, 27, 12) {
    @Override
    void draw(Pen outline, Pen detail, Part part) {
      outline.move(-27, 12).line(27, 12).line(27, 6).arc(28, false, -27, 6).close();
    }
  },
  KNOB(Sits.BESIDE, 26, 17) {
    @Override
    void draw(Pen outline, Pen detail, Part part) {
      outline.rectangle(26, 17, 3);
      detail.circle(0, 0, 11).move(-7, 7).line(7, -7);
    }
  },
  BLOCK(Sits.BETWEEN, 21, 11) {
    @Override
    void draw(Pen outline, Pen detail, Part part) {
      outline.rectangle(21, 11, 2);
    }
  };

  /** Where the body is in relation to its leads. */
  enum Sits {
    BETWEEN,
    BESIDE,
    OVER
  }

  private final Sits sits;
  final double halfLength;
  final double halfWidth;

  Form(Sits sits, double halfLength, double halfWidth) {
    this.sits = sits;
    this.halfLength = halfLength;
    this.halfWidth = halfWidth;
  }

  abstract void draw(Pen outline, Pen detail, Part part);

  static Form of(Part part) {
    return switch (part.kind().name()) {
      case "resistor", "photoresistor", "thermistor", "inductor" -> BAR;
      case "led" -> DOME;
      case "diode", "zener" -> BANDED;
      case "switch", "changeover" -> LEVER;
      case "button" -> CAP;
      case "npn", "pnp", "nmos", "pmos", "regulator" -> ROUNDED;
      case "potentiometer" -> KNOB;
      default -> BLOCK;
    };
  }

  Sits sits() {
    return sits;
  }

  /** The body with this frame. */
  Body body(Pen frame, Part part) {
    Pen outline = frame.fresh();
    Pen detail = frame.fresh();
    draw(outline, detail, part);
    Box one = Box.between(frame.out(-halfLength, -halfWidth), frame.out(halfLength, halfWidth), 1);
    Box other =
        Box.between(frame.out(-halfLength, halfWidth), frame.out(halfLength, -halfWidth), 1);
    Box extent = one.width() * one.height() > other.width() * other.height() ? one : other;
    return new Body(part.ref(), part.kind().name(), outline.path(), detail.path(), extent);
  }

  /** Where a lead enters the body: the point of its outline nearest to the hole, in its frame. */
  Spot entry(Spot hole) {
    double x = Math.max(4 - halfLength, Math.min(halfLength - 4, hole.x()));
    double y = Math.max(2 - halfWidth, Math.min(halfWidth - 2, hole.y()));
    return new Spot(x, y);
  }
}
