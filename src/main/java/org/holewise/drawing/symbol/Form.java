package org.holewise.drawing.symbol;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing.End;
import org.holewise.drawing.sheet.Drawing.Figure;
import org.holewise.drawing.sheet.Point;
import org.holewise.drawing.sheet.TextSize;
import org.holewise.engine.part.Part;

/**
 * The form of a symbol in a frame of its own, unturned: where its pins are, what it covers, how it
 * is drawn. Two-ended forms lie level, the first pin left. Immutable.
 *
 * @param manner how it may stand
 * @param body the rectangle round it, without leads
 * @param solid what it covers of that
 */
public record Form(
    Manner manner,
    List<Port> ports,
    Area body,
    List<Area> solid,
    List<Inner> texts,
    Consumer<Pen> strokes) {

  /** How a symbol may stand. */
  public enum Manner {
    /** Two ends in one line; stands or lies. */
    TWO_ENDED,
    /** A current runs from top to bottom and something acts from the side. */
    CHANNEL,
    /** Inputs left, outputs right, upright. */
    BLOCK
  }

  /**
   * A pin of the form.
   *
   * @param at its outer end
   * @param root where it leaves the body
   */
  public record Port(String pin, Point at, Point root) {}

  /** A text inside of the symbol or at its leads. */
  public record Inner(String text, TextSize size, double x, double baseline, String anchor) {}

  Form(Manner manner, List<Port> ports, Area body, List<Inner> texts, Consumer<Pen> strokes) {
    this(manner, ports, body, List.of(body), texts, strokes);
  }

  public Form {
    solid = List.copyOf(solid);
    ports = List.copyOf(ports);
    texts = List.copyOf(texts);
  }

  static Form twoEnded(String a, String b, Area body, Consumer<Pen> strokes) {
    return twoEnded(a, b, body, List.of(body), strokes);
  }

  static Form twoEnded(String a, String b, Area body, List<Area> solid, Consumer<Pen> strokes) {
    return new Form(
        Manner.TWO_ENDED,
        List.of(
            new Port(a, new Point(-30, 0), new Point((int) body.x(), 0)),
            new Port(b, new Point(30, 0), new Point((int) Math.ceil(body.right()), 0))),
        body,
        solid,
        List.of(),
        strokes);
  }

  public Optional<Port> port(String pin) {
    return ports.stream().filter(port -> port.pin().equals(pin)).findFirst();
  }

  /**
   * It as a figure of a drawing, moved and turned; {@code nets} by port, empty where there is none.
   */
  public Figure figure(Part part, int unit, Point at, Turn turn, List<String> nets) {
    var pen = new Pen(at, turn);
    strokes.accept(pen);
    var ends = new ArrayList<End>();
    for (int i = 0; i < ports.size(); i++) {
      Port port = ports.get(i);
      ends.add(
          new End(
              part.pin(port.pin()),
              nets.get(i),
              moved(turn.of(port.at()), at),
              moved(turn.of(port.root()), at)));
    }
    return new Figure(
        part.ref(),
        part.kind().name(),
        unit,
        turn.of(body).moved(at.x(), at.y()),
        solid.stream().map(area -> turn.of(area).moved(at.x(), at.y())).toList(),
        pen.strokes(),
        ends);
  }

  private static Point moved(Point point, Point by) {
    return point.plus(by.x(), by.y());
  }
}
