package org.holewise.drawing.check;

import java.util.List;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawing.End;
import org.holewise.drawing.sheet.Drawing.Figure;
import org.holewise.drawing.sheet.Drawing.Mark;
import org.holewise.drawing.sheet.Drawing.Wire;

/** Wires run level or upright, clear of bodies, foreign pins and foreign wires. */
final class WireLaws {
  private final Drawing drawing;
  private final Faults faults;

  private WireLaws(Drawing drawing, Faults faults) {
    this.drawing = drawing;
    this.faults = faults;
  }

  static void judge(Drawing drawing, Faults faults) {
    var laws = new WireLaws(drawing, faults);
    laws.wiresAreLevelOrUpright();
    laws.wiresKeepClear();
    laws.netsKeepApart();
  }

  private void wiresAreLevelOrUpright() {
    for (Wire wire : drawing.wires()) {
      boolean level = wire.from().y() == wire.to().y();
      boolean upright = wire.from().x() == wire.to().x();
      if (level == upright) {
        faults.add("oblique-wire", List.of(), List.of(wire.net()));
      }
    }
  }

  /** No wire on a body, on a lead, on a foreign pin or on a symbol of a net. */
  private void wiresKeepClear() {
    for (Wire wire : drawing.wires()) {
      Area area = Lines.area(wire);
      for (Figure figure : drawing.figures()) {
        if (figure.body().meets(area)) {
          faults.add("wire-on-body", List.of(figure.ref()), List.of(wire.net()));
        }
        for (End end : figure.ends()) {
          boolean foreign = Lines.on(end.at(), wire) && !end.net().equals(wire.net());
          if (foreign || onLead(wire, end)) {
            faults.add("wire-on-pin", List.of(figure.ref()), List.of(wire.net()));
          }
        }
      }
      for (Mark mark : drawing.marks()) {
        boolean foreign = Lines.on(mark.at(), wire) && !mark.net().equals(wire.net());
        Area body = mark.body();
        boolean across =
            Lines.level(wire)
                ? body.meets(area)
                : !mark.kind().equals("supply")
                    && new Area(body.x(), body.y() + 1, body.width(), body.height() - 1)
                        .meets(area);
        if (foreign || across) {
          faults.add("wire-on-mark", List.of(), List.of(wire.net(), mark.net()));
        }
      }
    }
  }

  /** Whether a wire shares more of a lead than its outer end. */
  private static boolean onLead(Wire wire, End end) {
    int dx = Integer.signum(end.root().x() - end.at().x());
    int dy = Integer.signum(end.root().y() - end.at().y());
    Area rest =
        Area.between(end.at().x() + 2 * dx, end.at().y() + 2 * dy, end.root().x(), end.root().y())
            .grown(0.75);
    return (dx != 0 || dy != 0) && rest.meets(Lines.area(wire));
  }

  private void netsKeepApart() {
    List<Wire> wires = drawing.wires();
    for (int i = 0; i < wires.size(); i++) {
      for (int j = 0; j < i; j++) {
        Wire a = wires.get(i);
        Wire b = wires.get(j);
        if (!a.net().equals(b.net()) && Lines.touch(a, b)) {
          faults.add("nets-touch", List.of(), List.of(a.net(), b.net()));
        }
      }
    }
  }
}
