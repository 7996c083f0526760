package org.holewise.drawing.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.holewise.drawing.circuit.Schematic;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawing.Dot;
import org.holewise.drawing.sheet.Drawing.End;
import org.holewise.drawing.sheet.Drawing.Figure;
import org.holewise.drawing.sheet.Drawing.Mark;
import org.holewise.drawing.sheet.Drawing.Text;
import org.holewise.drawing.sheet.Drawing.Wire;
import org.holewise.drawing.sheet.Point;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * Whether a drawing keeps the laws of drawings and says what its schematic says. It looks at the
 * drawing alone, not at how it came about.
 */
public final class Check {

  /**
   * A law that does not hold.
   *
   * @param law a short name
   * @param parts refs that it is about
   * @param nets names that it is about
   */
  public record Fault(String law, List<String> parts, List<String> nets) {}

  private final Schematic schematic;
  private final Drawing drawing;
  private final List<Fault> faults = new ArrayList<>();

  private Check(Schematic schematic, Drawing drawing) {
    this.schematic = schematic;
    this.drawing = drawing;
  }

  /** What is wrong with a drawing; nothing where it is sound. */
  public static List<Fault> faults(Schematic schematic, Drawing drawing) {
    var check = new Check(schematic, drawing);
    check.all();
    return List.copyOf(check.faults);
  }

  private void all() {
    everyPartIsThere();
    bodiesAreApart();
    leadsAreApart();
    textsCoverNothing();
    wiresAreLevelOrUpright();
    wiresKeepClear();
    netsKeepApart();
    dotsAreWhereThreeMeet();
    noEndIsLoose();
    theNetlistIsTheSame();
    allIsInTheFrame();
  }

  private void fault(String law, List<String> parts, List<String> nets) {
    faults.add(new Fault(law, parts, nets));
  }

  private void everyPartIsThere() {
    var drawn = new HashSet<String>();
    drawing.figures().forEach(figure -> drawn.add(figure.ref()));
    var ends = new HashSet<Pin>();
    ends().forEach(end -> ends.add(end.pin()));
    for (Part part : schematic.parts()) {
      if (!drawn.contains(part.ref())) {
        fault("missing-part", List.of(part.ref()), List.of());
      }
    }
    for (Net net : schematic.nets()) {
      for (Pin pin : net.pins()) {
        if (net.pins().size() > 1 && !ends.contains(pin)) {
          fault("missing-pin", List.of(pin.ref()), List.of(net.name()));
        }
      }
    }
  }

  private List<End> ends() {
    return drawing.figures().stream().flatMap(figure -> figure.ends().stream()).toList();
  }

  private void bodiesAreApart() {
    List<Figure> figures = drawing.figures();
    for (int i = 0; i < figures.size(); i++) {
      for (int j = 0; j < i; j++) {
        Figure a = figures.get(i);
        Figure b = figures.get(j);
        if (a.body().meets(b.body())) {
          fault("bodies-meet", List.of(a.ref(), b.ref()), List.of());
        }
      }
      for (Mark mark : drawing.marks()) {
        if (figures.get(i).body().meets(mark.body())) {
          fault("bodies-meet", List.of(figures.get(i).ref()), List.of(mark.net()));
        }
      }
    }
    for (int i = 0; i < drawing.marks().size(); i++) {
      for (int j = 0; j < i; j++) {
        if (drawing.marks().get(i).body().meets(drawing.marks().get(j).body())) {
          fault("marks-meet", List.of(), List.of(drawing.marks().get(i).net()));
        }
      }
    }
  }

  /** A lead lies on no other figure, and pins that are one point are on one net. */
  private void leadsAreApart() {
    for (Figure figure : drawing.figures()) {
      for (End end : figure.ends()) {
        Area lead = Lines.area(end.at(), end.root());
        for (Figure other : drawing.figures()) {
          if (other != figure) {
            if (other.body().meets(lead)) {
              fault("lead-on-body", List.of(figure.ref(), other.ref()), List.of());
            }
            for (End its : other.ends()) {
              boolean same = its.at().equals(end.at());
              boolean joined = same && !end.net().isEmpty() && end.net().equals(its.net());
              if (!joined && Lines.area(its.at(), its.root()).meets(lead)) {
                fault("leads-meet", List.of(figure.ref(), other.ref()), List.of());
              }
            }
          }
        }
      }
    }
  }

  private void textsCoverNothing() {
    List<Text> texts = drawing.texts();
    for (int i = 0; i < texts.size(); i++) {
      Text text = texts.get(i);
      for (int j = 0; j < i; j++) {
        if (text.extent().meets(texts.get(j).extent())) {
          fault("texts-meet", of(text, texts.get(j)), List.of());
        }
      }
      boolean inner = text.style().ordinal() >= org.holewise.drawing.sheet.TextSize.PIN.ordinal();
      for (Figure figure : drawing.figures()) {
        if (!(inner && figure.ref().equals(text.ref()))
            && figure.solid().stream().anyMatch(area -> area.meets(text.extent()))) {
          fault("text-on-body", List.of(text.ref(), figure.ref()), List.of());
        }
        for (End end : figure.ends()) {
          if (Lines.area(end.at(), end.root()).meets(text.extent())) {
            fault("text-on-lead", List.of(text.ref(), figure.ref()), List.of());
          }
        }
      }
      for (Wire wire : drawing.wires()) {
        if (Lines.area(wire).meets(text.extent())) {
          fault("text-on-wire", of(text), List.of(wire.net()));
        }
      }
      for (Mark mark : drawing.marks()) {
        if (mark.body().meets(text.extent())) {
          fault("text-on-mark", of(text), List.of(mark.net()));
        }
      }
    }
  }

  private static List<String> of(Text... texts) {
    return java.util.stream.Stream.of(texts).map(Text::ref).filter(ref -> !ref.isEmpty()).toList();
  }

  private void wiresAreLevelOrUpright() {
    for (Wire wire : drawing.wires()) {
      boolean level = wire.from().y() == wire.to().y();
      boolean upright = wire.from().x() == wire.to().x();
      if (level == upright) {
        fault("oblique-wire", List.of(), List.of(wire.net()));
      }
    }
  }

  /** No wire on a body, on a lead, on a foreign pin or on a symbol of a net. */
  private void wiresKeepClear() {
    for (Wire wire : drawing.wires()) {
      Area area = Lines.area(wire);
      for (Figure figure : drawing.figures()) {
        if (figure.body().meets(area)) {
          fault("wire-on-body", List.of(figure.ref()), List.of(wire.net()));
        }
        for (End end : figure.ends()) {
          boolean foreign = Lines.on(end.at(), wire) && !end.net().equals(wire.net());
          if (foreign || onLead(wire, end)) {
            fault("wire-on-pin", List.of(figure.ref()), List.of(wire.net()));
          }
        }
      }
      for (Mark mark : drawing.marks()) {
        boolean foreign = Lines.on(mark.at(), wire) && !mark.net().equals(wire.net());
        Area body = mark.body();
        boolean across =
            Lines.level(wire)
                ? body.meets(area)
                : mark.kind().equals("ground")
                    && new Area(body.x(), body.y() + 1, body.width(), body.height() - 1)
                        .meets(area);
        if (foreign || across) {
          fault("wire-on-mark", List.of(), List.of(wire.net(), mark.net()));
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
          fault("nets-touch", List.of(), List.of(a.net(), b.net()));
        }
      }
    }
  }

  private void dotsAreWhereThreeMeet() {
    Map<Point, Integer> arms = new LinkedHashMap<>();
    for (Point point : joints()) {
      arms.put(point, arms(point));
    }
    var dotted = new HashSet<Point>();
    for (Dot dot : drawing.dots()) {
      dotted.add(dot.at());
      if (arms(dot.at()) < 3) {
        fault("dot-without-joint", List.of(), List.of(dot.net()));
      }
    }
    arms.forEach(
        (point, number) -> {
          if (number > 2 && !dotted.contains(point)) {
            fault("joint-without-dot", List.of(), netsAt(point));
          }
        });
  }

  /** Where wires end. */
  private List<Point> joints() {
    var joints = new ArrayList<Point>();
    for (Wire wire : drawing.wires()) {
      joints.add(wire.from());
      joints.add(wire.to());
    }
    ends().forEach(end -> joints.add(end.at()));
    return joints;
  }

  private List<String> netsAt(Point point) {
    return drawing.wires().stream()
        .filter(wire -> Lines.on(point, wire))
        .map(Wire::net)
        .distinct()
        .toList();
  }

  private int arms(Point point) {
    int arms = 0;
    for (Wire wire : drawing.wires()) {
      if (Lines.on(point, wire)) {
        arms += Lines.inside(point, wire) ? 2 : 1;
      }
    }
    for (End end : ends()) {
      if (end.at().equals(point)) {
        arms++;
      }
    }
    return arms;
  }

  private void noEndIsLoose() {
    for (Wire wire : drawing.wires()) {
      for (Point end : List.of(wire.from(), wire.to())) {
        boolean mark = drawing.marks().stream().anyMatch(m -> m.at().equals(end));
        if (!mark && arms(end) < 2) {
          fault("loose-end", List.of(), List.of(wire.net()));
        }
      }
    }
    for (Mark mark : drawing.marks()) {
      if (arms(mark.at()) < 1) {
        fault("loose-mark", List.of(), List.of(mark.net()));
      }
    }
  }

  private void theNetlistIsTheSame() {
    var wanted = new TreeSet<String>();
    for (Net net : schematic.nets()) {
      if (net.pins().size() > 1) {
        wanted.add(new TreeSet<>(net.pins()).toString());
      }
    }
    if (!wanted.equals(ReadBack.nets(drawing))) {
      fault("other-netlist", List.of(), List.of());
    }
  }

  private void allIsInTheFrame() {
    Area frame = drawing.frame();
    boolean out =
        drawing.texts().stream().anyMatch(text -> !holds(frame, text.extent()))
            || drawing.figures().stream().anyMatch(figure -> !holds(frame, figure.body()))
            || drawing.wires().stream().anyMatch(wire -> !holds(frame, Lines.area(wire)));
    if (out) {
      fault("outside", List.of(), List.of());
    }
  }

  private static boolean holds(Area frame, Area area) {
    return area.x() >= frame.x()
        && area.y() >= frame.y()
        && area.right() <= frame.right()
        && area.bottom() <= frame.bottom();
  }
}
