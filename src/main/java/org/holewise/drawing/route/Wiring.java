package org.holewise.drawing.route;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import org.holewise.drawing.place.Layout;
import org.holewise.drawing.place.Piece;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing.Dot;
import org.holewise.drawing.sheet.Drawing.Mark;
import org.holewise.drawing.sheet.Drawing.Text;
import org.holewise.drawing.sheet.Drawing.Wire;
import org.holewise.drawing.sheet.Point;
import org.holewise.drawing.symbol.Inside;

/**
 * The wires of a layout, with the symbols of nets that are drawn as such.
 *
 * @param failed names of nets for which there was no way
 * @param looked how much was looked at for them, in steps from one point to the next
 */
public record Wiring(
    List<Wire> wires,
    List<Dot> dots,
    List<Mark> marks,
    List<Text> texts,
    List<String> failed,
    long looked) {
  private static final int MARGIN = 90;
  private static final int NEAR_TOLL = 6;
  private static final int LABEL_TOLL = 14;

  public static Wiring of(Layout layout) {
    return new Work(layout).wiring();
  }

  private static final class Work {
    private final Layout layout;
    private final Grid grid;
    private final List<Strand> strands = new ArrayList<>();
    private final Marks marks;

    Work(Layout layout) {
      this.layout = layout;
      var solid = new ArrayList<Area>();
      for (Piece piece : layout.pieces()) {
        solid.add(piece.body());
        solid.addAll(Inside.extents(piece.form(), piece.turn(), piece.at()));
        for (int port = 0; port < piece.ports(); port++) {
          Point a = piece.root(port);
          Point b = piece.place(port);
          solid.add(Area.between(a.x(), a.y(), b.x() - piece.outX(port), b.y() - piece.outY(port)));
        }
      }
      this.marks = new Marks(layout, solid);
      this.grid = new Grid(frame(solid).grown(MARGIN));
      block();
      for (int net = 0; net < layout.nets().size(); net++) {
        if (!layout.marked(net)) {
          strands.add(strand(net));
        }
      }
      strands.addAll(marks.strands);
    }

    private Area frame(List<Area> solid) {
      Area all = new Area(0, layout.top(), 0, layout.bottom() - layout.top());
      for (Area area : solid) {
        all = all.with(area);
      }
      for (Mark mark : marks.marks) {
        all = all.with(mark.body());
      }
      return all;
    }

    private void block() {
      for (Piece piece : layout.pieces()) {
        grid.block(piece.body());
        grid.charge(piece.body().grown(10), NEAR_TOLL);
        for (Area text : Inside.extents(piece.form(), piece.turn(), piece.at())) {
          grid.block(text);
        }
        for (int port = 0; port < piece.ports(); port++) {
          Point a = piece.root(port);
          Point b = piece.place(port);
          grid.block(Area.between(a.x(), a.y(), b.x(), b.y()));
          if (piece.net(port) < 0) {
            grid.pin[grid.node(b)] = Grid.DEAD;
          }
        }
        Area body = piece.body();
        if (body.height() > body.width()) {
          grid.charge(
              new Area(body.right(), piece.at().y() - 16, 12 + piece.labelRoom(), 32), LABEL_TOLL);
        } else {
          grid.charge(new Area(body.x() - 8, body.y() - 20, body.width() + 16, 20), LABEL_TOLL);
        }
      }
      for (Piece piece : layout.pieces()) {
        for (int port = 0; port < piece.ports(); port++) {
          if (piece.net(port) >= 0) {
            grid.blocked[grid.node(piece.place(port))] = false;
          }
        }
      }
      for (Mark mark : marks.marks) {
        Area under = mark.body().grown(2);
        grid.block(under);
        grid.blocked[grid.node(mark.at())] = false;
      }
      for (Text text : marks.texts) {
        grid.block(text.extent().grown(1));
      }
    }

    private Strand strand(int net) {
      var ends = new LinkedHashSet<Point>();
      for (Piece piece : layout.pieces()) {
        for (int port = 0; port < piece.ports(); port++) {
          if (piece.net(port) == net) {
            ends.add(piece.place(port));
          }
        }
      }
      int line = layout.line(net);
      return new Strand(
          net,
          List.copyOf(ends),
          line > 0
              ? OptionalInt.of(layout.top())
              : line < 0 ? OptionalInt.of(layout.bottom()) : OptionalInt.empty());
    }

    Wiring wiring() {
      var router = new Router(grid, strands);
      trim();
      var failed = new LinkedHashSet<String>();
      router.failed().forEach(i -> failed.add(layout.nets().name(strands.get(i).net())));
      marks.homeless.forEach(net -> failed.add(layout.nets().name(net)));
      return new Wiring(
          wires(),
          dots(),
          List.copyOf(marks.marks),
          List.copyOf(marks.texts),
          List.copyOf(failed),
          router.looked());
    }

    /** Takes away ends of lines that lead nowhere. */
    private void trim() {
      for (boolean again = true; again; ) {
        again = false;
        for (int node = 0; node < grid.right.length; node++) {
          if (grid.blocked[node] && grid.pin[node] == Grid.FREE) {
            continue;
          }
          again |= grid.pin[node] == Grid.FREE && trim(node);
        }
      }
    }

    private boolean trim(int node) {
      int only = -1;
      for (int way = 0; way < 4; way++) {
        if (grid.arm(node, way) != Grid.FREE) {
          if (only >= 0) {
            return false;
          }
          only = way;
        }
      }
      if (only < 0) {
        return false;
      }
      grid.lay(node, only, Grid.FREE);
      return true;
    }

    private String name(int strand) {
      return layout.nets().name(strands.get(strand - 1).net());
    }

    private List<Wire> wires() {
      var wires = new ArrayList<Wire>();
      for (int way = 0; way < 2; way++) {
        int step = grid.step(way);
        for (int node = grid.columns; node < grid.right.length - grid.columns; node++) {
          int strand = way == 0 ? grid.right[node] : grid.down[node];
          int before = way == 0 ? grid.right[node - 1] : grid.down[node - grid.columns];
          if (strand != Grid.FREE && before != strand) {
            int end = node;
            while ((way == 0 ? grid.right[end] : grid.down[end]) == strand) {
              end += step;
            }
            wires.add(new Wire(name(strand), grid.point(node), grid.point(end)));
          }
        }
      }
      return wires;
    }

    private List<Dot> dots() {
      var leads = new int[grid.pin.length];
      for (Piece piece : layout.pieces()) {
        for (int port = 0; port < piece.ports(); port++) {
          leads[grid.node(piece.place(port))]++;
        }
      }
      var dots = new ArrayList<Dot>();
      for (int node = grid.columns; node < grid.right.length - grid.columns; node++) {
        for (int strand = 1; strand <= strands.size() && grid.wired(node); strand++) {
          if (grid.touches(node, strand)
              && grid.arms(node, strand) + (grid.pin[node] == strand ? leads[node] : 0) > 2) {
            dots.add(new Dot(name(strand), grid.point(node)));
          }
        }
      }
      return dots;
    }
  }
}
