package org.holewise.drawing.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing.Dot;
import org.holewise.drawing.sheet.Drawing.End;
import org.holewise.drawing.sheet.Drawing.Figure;
import org.holewise.drawing.sheet.Drawing.Mark;
import org.holewise.drawing.sheet.Drawing.Text;
import org.holewise.drawing.sheet.Drawing.Wire;
import org.holewise.drawing.sheet.TextSize;

/**
 * Names figures: ref and value at the first of the usual spots, then at the nearest of those
 * further out, where they cover nothing. Wires are laid before.
 */
public final class Labels {
  private static final double CLEAR = 2;
  private static final double DOT = 4;

  /** As far apart as two names can be told at a glance. */
  private static final double APART = 4;

  /** How many of the usual spots are looked at for one that is apart from other names. */
  private static final int ROOMY = 4;

  private final List<Area> taken = new ArrayList<>();
  private final List<Area> words = new ArrayList<>();
  private final List<Text> texts = new ArrayList<>();
  private final List<String> homeless = new ArrayList<>();

  public Labels(
      List<Figure> figures, List<Wire> wires, List<Dot> dots, List<Mark> marks, List<Text> fixed) {
    for (Figure figure : figures) {
      taken.addAll(figure.solid());
      for (End end : figure.ends()) {
        taken.add(line(end.at().x(), end.at().y(), end.root().x(), end.root().y()));
      }
    }
    for (Wire wire : wires) {
      taken.add(line(wire.from().x(), wire.from().y(), wire.to().x(), wire.to().y()));
    }
    for (Dot dot : dots) {
      taken.add(new Area(dot.at().x() - DOT, dot.at().y() - DOT, 2 * DOT, 2 * DOT));
    }
    marks.forEach(mark -> taken.add(mark.body().grown(1)));
    for (Text text : fixed) {
      taken.add(text.extent());
      words.add(text.extent());
    }
  }

  private static Area line(double x1, double y1, double x2, double y2) {
    return Area.between(x1, y1, x2, y2).grown(CLEAR);
  }

  public List<Text> texts() {
    return List.copyOf(texts);
  }

  /** Refs of figures for whose texts there was no room. */
  public List<String> homeless() {
    return List.copyOf(homeless);
  }

  /** Names a figure; {@code value} empty where it has none. */
  public void name(Figure figure, String ref, String value) {
    List<List<Text>> free =
        new Spots(figure, ref, value)
            .all().stream().filter(spot -> spot.stream().allMatch(this::free)).toList();
    Optional<List<Text>> found =
        free.stream()
            .limit(ROOMY)
            .filter(spot -> spot.stream().allMatch(this::apart))
            .findFirst()
            .or(() -> free.stream().findFirst());
    if (found.isEmpty()) {
      homeless.add(figure.ref());
      return;
    }
    found.get().forEach(this::write);
  }

  private void write(Text text) {
    texts.add(text);
    taken.add(text.extent());
    words.add(text.extent());
  }

  /** Puts a ring beyond the end of a figure's lead; one without room for it is homeless. */
  public Optional<Mark> ring(Figure figure, Mark mark, End end) {
    Area beyond = mark.body().grown(-0.25);
    if (!free(beyond.moved(CLEAR * outX(end), CLEAR * outY(end)))) {
      homeless.add(figure.ref());
      return Optional.empty();
    }
    taken.add(mark.body().grown(1));
    return Optional.of(mark);
  }

  /** Writes a ring's net beside it, where there is room. */
  public void name(Mark mark, End end) {
    Terminals.names(mark, outX(end), outY(end)).stream()
        .filter(this::free)
        .findFirst()
        .ifPresent(this::write);
  }

  private static int outX(End end) {
    return Integer.signum(end.at().x() - end.root().x());
  }

  private static int outY(End end) {
    return Integer.signum(end.at().y() - end.root().y());
  }

  private boolean apart(Text text) {
    return words.stream().noneMatch(text.extent().grown(APART)::meets);
  }

  private boolean free(Text text) {
    return free(text.extent().grown(0.5));
  }

  private boolean free(Area extent) {
    return taken.stream().noneMatch(extent::meets);
  }

  /** The spots that come into question for a figure's texts, the best first. */
  private static final class Spots {
    private static final double LINE = 14;
    private static final double BESIDE = 6;
    private static final int RINGS = 14;

    private final Figure figure;
    private final String ref;
    private final String value;
    private final Area body;
    private final double cx;
    private final double cy;
    private final List<List<Text>> all = new ArrayList<>();

    Spots(Figure figure, String ref, String value) {
      this.figure = figure;
      this.ref = ref;
      this.value = value;
      this.body = figure.body();
      this.cx = body.x() + body.width() / 2;
      this.cy = body.y() + body.height() / 2;
    }

    List<List<Text>> all() {
      if (figure.ends().size() > 2 && body.width() > 40) {
        block();
      } else if (upright()) {
        beside(body.right() + BESIDE, "start");
        beside(body.x() - BESIDE, "end");
      } else {
        level();
      }
      rings();
      return all;
    }

    private boolean upright() {
      return figure.ends().stream().anyMatch(end -> end.at().x() == end.root().x());
    }

    private Text text(TextSize size, double x, double baseline, String anchor) {
      String words = size == TextSize.REF ? ref : value;
      return new Text(
          words,
          size,
          figure.ref(),
          "",
          tenths(x),
          tenths(baseline),
          anchor,
          size.extent(words, anchor, tenths(x), tenths(baseline)));
    }

    private static double tenths(double px) {
      return Math.round(px * 10) / 10.0;
    }

    /** Two texts, one of which may be empty. */
    private void put(double x1, double y1, String anchor1, double x2, double y2, String anchor2) {
      var spot = new ArrayList<Text>();
      spot.add(text(TextSize.REF, x1, y1, anchor1));
      if (!value.isEmpty()) {
        spot.add(text(TextSize.VALUE, x2, y2, anchor2));
      }
      all.add(spot);
    }

    private void lines(double x, double middle, String anchor) {
      if (value.isEmpty()) {
        put(x, middle + 4, anchor, x, middle, anchor);
      } else {
        put(x, middle - 3, anchor, x, middle - 3 + LINE, anchor);
      }
    }

    private void beside(double x, String anchor) {
      lines(x, cy, anchor);
      lines(x, cy - 8, anchor);
      lines(x, cy + 8, anchor);
      lines(x, cy - 16, anchor);
      lines(x, cy + 16, anchor);
    }

    private void level() {
      double over = body.y() - 4;
      double under = body.bottom() + 12;
      if (figure.solid().size() > 1) {
        besideArrows(figure.solid().get(0), figure.solid().get(1), under);
      }
      put(cx, over, "middle", cx, under, "middle");
      if (!value.isEmpty()) {
        put(cx, over - LINE, "middle", cx, over, "middle");
        put(cx, under, "middle", cx, under + LINE, "middle");
        row(cx, over);
        row(cx, under);
      } else {
        put(cx, under, "middle", cx, under, "middle");
      }
    }

    /** Beside the arrows that a symbol has over it, which takes less height. */
    private void besideArrows(Area symbol, Area arrows, double under) {
      boolean over = arrows.y() < symbol.y();
      boolean room = arrows.x() > symbol.x() + symbol.right() - arrows.right();
      if (over && room) {
        put(arrows.x() - 3, symbol.y() - 4, "end", cx, under, "middle");
      } else if (over) {
        put(arrows.right() + 3, symbol.y() - 4, "start", cx, under, "middle");
      }
    }

    /** Both in one line about a middle. */
    private void row(double x, double baseline) {
      double whole =
          TextSize.REF.width(ref) + (value.isEmpty() ? 0 : 6 + TextSize.VALUE.width(value));
      rowFrom(x - whole / 2, baseline);
    }

    private void rowFrom(double left, double baseline) {
      put(left, baseline, "start", left + TextSize.REF.width(ref) + 6, baseline, "start");
    }

    private void block() {
      double over = body.y() - 5;
      double under = body.bottom() + 13;
      if (figure.solid().size() > 1) {
        lines(cx + 8, body.y() + 2, "start");
        lines(cx + 8, body.bottom() - 2, "start");
        lines(cx + 14, body.y() - 6, "start");
        lines(cx + 14, body.bottom() + 6, "start");
      }
      double width =
          TextSize.REF.width(ref) + (value.isEmpty() ? 0 : 6 + TextSize.VALUE.width(value));
      rowFrom(body.x(), over);
      rowFrom(body.right() - width, over);
      rowFrom(body.x(), under);
      rowFrom(body.right() - width, under);
      row(cx, over);
      row(cx, under);
    }

    private void rings() {
      for (int ring = 1; ring <= RINGS; ring++) {
        double dx = body.width() / 2 + ring * 5;
        double dy = body.height() / 2 + ring * 5 + 8;
        for (double share : new double[] {0, -0.5, 0.5, -1, 1}) {
          lines(cx + dx, cy + share * dy, "start");
          lines(cx - dx, cy + share * dy, "end");
          lines(cx + share * dx, cy - dy, "middle");
          lines(cx + share * dx, cy + dy, "middle");
        }
      }
    }
  }
}
