package org.holewise.school.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawing.Dot;
import org.holewise.drawing.sheet.Drawing.Figure;
import org.holewise.drawing.sheet.Drawing.Mark;
import org.holewise.drawing.sheet.Drawing.Stroke;
import org.holewise.drawing.sheet.Point;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * A drawing in groups as a page writes them: what belongs to each net and to each part, and where
 * each reading is taken (px). Immutable.
 *
 * @param size small where it fits the narrowest screen, large where it does not fit half a page
 * @param least the width at which its smallest text can still be read; a narrower screen scrolls
 */
public record SchematicPicture(
    Area frame,
    String size,
    double least,
    List<NetShape> nets,
    List<PartShape> parts,
    List<ProbingShape> probings) {

  /** As much as the narrowest screen (320 px) leaves between the edges of a card. */
  private static final double SMALL = 260;

  /** As much as half a page leaves on a desk. */
  private static final double MEDIUM = 520;

  /** How far the outline of a part that is chosen stands off it. */
  private static final double OFF = 5;

  private static final double LARGER = 1.2;

  /** The least size of a text that can be read on a phone (px). */
  private static final double READABLE = 10;

  /**
   * A net.
   *
   * @param wires as one path
   * @param reach the same with the leads of the symbols that it ends at
   */
  public record NetShape(
      String name,
      String wires,
      String reach,
      List<Dot> dots,
      List<Mark> marks,
      List<Words> texts) {}

  /** A part's symbols; {@code outlines}: a rectangle round each. */
  public record PartShape(
      String ref, List<Area> outlines, List<Stroke> strokes, List<Words> texts) {}

  /** Where a reading is taken. */
  public record ProbingShape(String reading, List<TouchShape> touches) {}

  /** A lead of the meter; {@code lead} and {@code letter} as {@link Probing.Touch} has them. */
  public record TouchShape(String lead, String letter, Point at) {}

  /** A text at its place. */
  public record Words(String text, String style, String anchor, double x, double y) {}

  static SchematicPicture of(Drawing drawing, Exercise exercise) {
    double width = drawing.frame().width();
    int smallest = drawing.texts().stream().mapToInt(text -> text.style().px()).min().orElse(1);
    double least = Math.ceil(width * Math.min(1, READABLE / smallest));
    return new SchematicPicture(
        drawing.frame(),
        least <= SMALL ? "small" : width <= MEDIUM ? "medium" : "large",
        least,
        exercise.nets().stream().map(net -> net(net, drawing)).toList(),
        exercise.parts().stream().map(part -> part(part, drawing)).toList(),
        probings(exercise, drawing));
  }

  /** Its width on a screen that has room for it. */
  public double width() {
    return Math.round(frame.width() * LARGER);
  }

  public double height() {
    return Math.round(frame.height() * LARGER);
  }

  public String viewBox() {
    return "%s %s %s %s"
        .formatted(
            number(frame.x()), number(frame.y()), number(frame.width()), number(frame.height()));
  }

  private static String number(double px) {
    return String.valueOf(Math.round(px));
  }

  private static NetShape net(Net net, Drawing drawing) {
    String name = net.name();
    String wires =
        drawing.wires().stream()
            .filter(wire -> wire.net().equals(name))
            .map(wire -> path(wire.from(), wire.to()))
            .collect(Collectors.joining());
    String leads =
        drawing.figures().stream()
            .flatMap(figure -> figure.ends().stream())
            .filter(end -> end.net().equals(name))
            .map(end -> path(end.at(), end.root()))
            .collect(Collectors.joining());
    return new NetShape(
        name,
        wires,
        wires + leads,
        drawing.dots().stream().filter(dot -> dot.net().equals(name)).toList(),
        drawing.marks().stream().filter(mark -> mark.net().equals(name)).toList(),
        texts(drawing.texts().stream().filter(text -> text.net().equals(name)).toList()));
  }

  private static List<ProbingShape> probings(Exercise exercise, Drawing drawing) {
    var ends = new LinkedHashMap<Pin, Point>();
    drawing
        .figures()
        .forEach(figure -> figure.ends().forEach(end -> ends.put(end.pin(), end.at())));
    return Probing.all(exercise).stream()
        .map(probing -> new ProbingShape(probing.reading(), touches(probing, ends)))
        .filter(probing -> !probing.touches().isEmpty())
        .toList();
  }

  /** One a point, though several pins may be there. */
  private static List<TouchShape> touches(Probing probing, Map<Pin, Point> ends) {
    var touches = new LinkedHashMap<Point, TouchShape>();
    for (Probing.Touch touch : probing.touches()) {
      Point at = ends.get(touch.pin());
      if (at != null) {
        touches.putIfAbsent(at, new TouchShape(touch.lead(), touch.letter(), at));
      }
    }
    return List.copyOf(touches.values());
  }

  private static String path(Point from, Point to) {
    return "M%d %dL%d %d".formatted(from.x(), from.y(), to.x(), to.y());
  }

  private static PartShape part(Part part, Drawing drawing) {
    var figures = drawing.figures().stream().filter(f -> f.ref().equals(part.ref())).toList();
    return new PartShape(
        part.ref(),
        figures.stream().map(Figure::body).map(body -> body.grown(OFF)).toList(),
        figures.stream().flatMap(figure -> figure.strokes().stream()).toList(),
        texts(drawing.texts().stream().filter(text -> text.ref().equals(part.ref())).toList()));
  }

  private static List<Words> texts(List<Drawing.Text> texts) {
    return texts.stream()
        .map(
            t ->
                new Words(t.text(), t.styleName(), t.anchor(), tenths(t.x()), tenths(t.baseline())))
        .toList();
  }

  private static double tenths(double px) {
    return Math.round(px * 10) / 10.0;
  }
}
