package org.holewise.drawing.route;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.holewise.drawing.place.Layout;
import org.holewise.drawing.place.Piece;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing.Mark;
import org.holewise.drawing.sheet.Drawing.Text;
import org.holewise.drawing.sheet.Point;
import org.holewise.drawing.sheet.TextSize;
import org.holewise.drawing.symbol.MarkForms;

/**
 * Puts a supply or ground symbol at each pin of a net that is drawn so; pins that face the same way
 * in one line share one. Each with its pins is a strand.
 */
final class Marks {
  private static final int[][] ASIDE = {
    {10, 10}, {20, 10}, {10, 20}, {20, 20}, {30, 10}, {30, 20}, {10, 30}, {20, 30}, {40, 20},
    {40, 40}, {10, 40}, {60, 20}, {60, 40}
  };
  private static final int[][] ALONG = {
    {0, 10}, {0, 20}, {0, 30}, {0, 40}, {20, 10}, {-20, 10}, {30, 10}, {-30, 10}, {30, 20},
    {-30, 20}, {40, 20}, {-40, 20}, {50, 10}, {-50, 10}
  };
  private static final int[][] AGAINST = {
    {20, 0}, {-20, 0}, {20, 10}, {-20, 10}, {30, 20}, {-30, 20}, {40, 30}, {-40, 30}, {0, -20},
    {60, 0}, {-60, 0}
  };

  private final Layout layout;
  private final List<Area> taken = new ArrayList<>();
  private final List<Point> pins = new ArrayList<>();
  final List<Mark> marks = new ArrayList<>();
  final List<Text> texts = new ArrayList<>();
  final List<Strand> strands = new ArrayList<>();
  final List<Integer> homeless = new ArrayList<>();

  private record Pinned(Point at, int outX, int outY) {}

  Marks(Layout layout, List<Area> taken) {
    this.layout = layout;
    this.taken.addAll(taken);
    for (Piece piece : layout.pieces()) {
      for (int port = 0; port < piece.ports(); port++) {
        pins.add(piece.place(port));
      }
    }
    for (int net = 0; net < layout.nets().size(); net++) {
      if (layout.marked(net)) {
        net(net);
      }
    }
  }

  private void net(int net) {
    int down = -layout.rails().way(net);
    Map<String, List<Pinned>> groups = new LinkedHashMap<>();
    for (Piece piece : layout.pieces()) {
      for (int port = 0; port < piece.ports(); port++) {
        if (piece.net(port) == net) {
          var pin = new Pinned(piece.place(port), piece.outX(port), piece.outY(port));
          String group = pin.outX != 0 ? pin.outX + " " + pin.at.x() : pin.at.toString();
          groups.computeIfAbsent(group, key -> new ArrayList<>()).add(pin);
        }
      }
    }
    groups.values().forEach(group -> mark(net, down, group));
  }

  private void mark(int net, int down, List<Pinned> group) {
    Pinned last =
        group.stream().reduce((a, b) -> (b.at.y() - a.at.y()) * down > 0 ? b : a).orElseThrow();
    int[][] places = last.outX != 0 ? ASIDE : last.outY == down ? ALONG : AGAINST;
    for (int[] place : places) {
      int dx = last.outX != 0 ? place[0] * last.outX : place[0];
      Point at = last.at.plus(dx, place[1] * down);
      boolean straight = last.outX == 0 && dx == 0 && last.outY == down;
      if (straight && !sees(last.at, at, down)) {
        continue;
      }
      if (put(net, down, at)) {
        var ends = new ArrayList<Point>();
        ends.add(at);
        group.forEach(pin -> ends.add(pin.at));
        strands.add(new Strand(net, ends, OptionalInt.empty()));
        return;
      }
    }
    homeless.add(net);
  }

  private boolean sees(Point pin, Point at, int down) {
    Area stem = Area.between(pin.x(), pin.y() + 1.5 * down, at.x(), at.y()).grown(1);
    return taken.stream().noneMatch(stem::meets);
  }

  private boolean put(int net, int down, Point at) {
    String name = layout.nets().name(net);
    boolean ground = net == layout.rails().ground();
    Mark mark = ground ? MarkForms.ground(name, at) : MarkForms.supply(name, at);
    Area area = mark.body().grown(3);
    List<Text> words = ground ? List.of() : List.of(text(net, down, at));
    for (Text text : words) {
      area = area.with(text.extent());
    }
    for (Area other : taken) {
      if (other.meets(area)) {
        return false;
      }
    }
    Area whole = area.grown(4);
    for (Point pin : pins) {
      if (whole.meets(new Area(pin.x() - 1, pin.y() - 1, 2, 2))) {
        boolean own = pin.x() == at.x() && (at.y() - pin.y()) * down > 0;
        if (!own) {
          return false;
        }
      }
    }
    taken.add(area);
    marks.add(mark);
    texts.addAll(words);
    return true;
  }

  private Text text(int net, int down, Point at) {
    String words = layout.label(net);
    double baseline = down < 0 ? at.y() - 4 : at.y() + 13;
    return new Text(
        words,
        TextSize.NET,
        "",
        layout.nets().name(net),
        at.x(),
        baseline,
        "middle",
        TextSize.NET.extent(words, "middle", at.x(), baseline));
  }
}
