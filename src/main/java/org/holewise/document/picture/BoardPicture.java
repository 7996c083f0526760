package org.holewise.document.picture;

import java.util.List;
import java.util.stream.Collectors;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * A board with a build on it as a drawing: every shape with its place (px), in the order in which
 * to draw them. Parts without any lead on the board are left out; what does not fit any more is the
 * label, never the part. Immutable; the same build gives the same drawing.
 */
public record BoardPicture(
    View view,
    Box frame,
    List<Section> sections,
    List<Edge> edges,
    List<Box> strips,
    List<RailLine> rails,
    List<Dot> holes,
    List<Metal> metals,
    List<Outline> outlines,
    List<Box> patches,
    List<Wire> wires,
    List<Lead> leads,
    List<Body> bodies,
    List<Ring> rings,
    List<Label> labels) {

  /** The outline of a board, or of the part of it that is drawn, as the {@code d} of a path. */
  public record Edge(String path) {}

  /** A rail's printed line along one piece of metal; {@code sign} is plus or minus. */
  public record RailLine(String sign, Spot from, Spot to) {}

  /** A hole; {@code used} by a lead or link. */
  public record Dot(Hole hole, Spot at, boolean used) {}

  /**
   * A strip, or the drawn part of a rail, that something is in.
   *
   * @param pins those in it as entered; where there are none, those that its links lead to
   */
  public record Metal(List<Pin> pins, Box box) {
    public String pinNames() {
      return written(pins);
    }
  }

  /** A dashed outline round the strip or rail of a hole. */
  public record Outline(Hole hole, Box box) {}

  /**
   * A link.
   *
   * @param number its place in the build's list, from 1
   * @param pattern 1 to 4: which dash and colour
   * @param link the holes as entered
   * @param pins in the strips at its ends, as entered
   */
  public record Wire(
      int number, int pattern, Spot from, Spot to, String path, Link link, List<Pin> pins) {
    public String pinNames() {
      return written(pins);
    }
  }

  /** As pages name pins to scripts, {@code R1.1 Q1.b}. */
  private static String written(List<Pin> pins) {
    return pins.stream().map(Pin::toString).collect(Collectors.joining(" "));
  }

  /** A lead from its hole to the body, or to the box beside the board. */
  public record Lead(Pin pin, Hole hole, Spot at, String style, String path) {}

  public record Body(String ref, String kind, String outline, String detail, Box extent) {}

  public record Ring(Hole hole, Spot at) {}

  /**
   * A text.
   *
   * @param style row, column, sign, gap, part, value, pin or link
   * @param extent what it covers, its ground included
   * @param baseline from the upper edge of the drawing (px)
   * @param leader path of a thin line to what it names; empty where it stands beside it
   */
  public record Label(String text, String style, Box extent, double baseline, String leader) {

    /** Whether it stands on a ground of its own, for it may stand on holes. */
    public boolean grounded() {
      return style.equals("part") || style.equals("link") || style.equals("pin");
    }
  }

  /** The free holes as one path of dots: a board has hundreds, and a page writes them at once. */
  public String freeDots() {
    return dots(false);
  }

  /** The holes with a lead or link in them, likewise. */
  public String usedDots() {
    return dots(true);
  }

  private String dots(boolean used) {
    var pen = Pen.plain();
    holes.stream()
        .filter(dot -> dot.used() == used)
        .map(Dot::at)
        .forEach(at -> pen.move(at.x(), at.y()).line(at.x(), at.y()));
    return pen.path();
  }

  /** The middle lines of all strips as one path, to be drawn as broad as a strip. */
  public String stripLines() {
    var pen = Pen.plain();
    for (Box strip : strips) {
      double edge = Math.min(strip.width(), strip.height()) / 2;
      pen.move(strip.x() + edge, strip.y() + edge)
          .line(strip.x() + strip.width() - edge, strip.y() + strip.height() - edge);
    }
    return pen.path();
  }

  /** Draws the used columns with a margin, or the whole board. */
  public static BoardPicture of(
      Build build, List<Part> parts, Highlight highlight, View view, boolean whole) {
    return new Assembly(build, parts, view, whole).picture(highlight);
  }
}
