package org.holewise.drawing.sheet;

import java.util.List;
import org.holewise.engine.part.Pin;

/**
 * A schematic as a drawing: everything with its place (px, from the upper left corner), and with
 * the ref or net that it belongs to. Wires run level or upright between points of a grid of 10.
 * Texts are to be written in the sizes that {@link TextSize} gives. Immutable; the same schematic
 * gives the same drawing on every machine.
 *
 * @param marks symbols that stand for a net; equal ones of supply or ground are joined unseen
 */
public record Drawing(
    SymbolStyle style,
    Area frame,
    List<Figure> figures,
    List<Wire> wires,
    List<Dot> dots,
    List<Mark> marks,
    List<Text> texts) {
  public Drawing {
    figures = List.copyOf(figures);
    wires = List.copyOf(wires);
    dots = List.copyOf(dots);
    marks = List.copyOf(marks);
    texts = List.copyOf(texts);
  }

  /**
   * A part's symbol, or one of several that a part has.
   *
   * @param kind the kind's name
   * @param unit 1, 2 for the halves of a chip; 0 where there is one symbol
   * @param body the rectangle round it, its leads left out
   * @param solid what it covers of that
   */
  public record Figure(
      String ref,
      String kind,
      int unit,
      Area body,
      List<Area> solid,
      List<Stroke> strokes,
      List<End> ends) {
    public Figure {
      solid = List.copyOf(solid);
      strokes = List.copyOf(strokes);
      ends = List.copyOf(ends);
    }
  }

  /**
   * A path of a symbol.
   *
   * @param style line, thin, solid (filled) or ground (filled as the page is)
   * @param d as in SVG
   */
  public record Stroke(String style, String d) {}

  /**
   * Where a wire meets a symbol.
   *
   * @param net empty where the pin is on none
   * @param at the lead's outer end
   * @param root where the lead leaves the body
   */
  public record End(Pin pin, String net, Point at, Point root) {}

  /** A straight piece of wire. */
  public record Wire(String net, Point from, Point to) {}

  /** A dot where three wires or more meet. */
  public record Dot(String net, Point at) {}

  /**
   * A symbol that stands for a net.
   *
   * @param kind ground, supply, or terminal for a net of one pin
   * @param at where its wire or lead ends
   */
  public record Mark(String net, String kind, Point at, Area body, List<Stroke> strokes) {
    public Mark {
      strokes = List.copyOf(strokes);
    }
  }

  /**
   * A text.
   *
   * @param style ref, value, pin, number or net
   * @param ref of the part that it belongs to; empty for a net's
   * @param net empty for a part's
   * @param anchor start, middle or end
   */
  public record Text(
      String text,
      TextSize style,
      String ref,
      String net,
      double x,
      double baseline,
      String anchor,
      Area extent) {

    /** Which of a drawing's styles it has, in small letters. */
    public String styleName() {
      return style.key();
    }
  }
}
