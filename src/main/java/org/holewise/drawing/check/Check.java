package org.holewise.drawing.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import org.holewise.drawing.circuit.Schematic;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawing.End;
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
  private final Faults faults = new Faults();

  private Check(Schematic schematic, Drawing drawing) {
    this.schematic = schematic;
    this.drawing = drawing;
  }

  /** What is wrong with a drawing; nothing where it is sound. */
  public static List<Fault> faults(Schematic schematic, Drawing drawing) {
    var check = new Check(schematic, drawing);
    check.all();
    return check.faults.found();
  }

  private void all() {
    everyPartIsThere();
    FigureLaws.judge(drawing, faults);
    TextLaws.judge(drawing, faults);
    WireLaws.judge(drawing, faults);
    JointLaws.judge(drawing, faults);
    theNetlistIsTheSame();
    openEndsHaveTerminals();
    allIsInTheFrame();
  }

  private void everyPartIsThere() {
    var drawn = new HashSet<String>();
    drawing.figures().forEach(figure -> drawn.add(figure.ref()));
    var ends = new HashSet<Pin>();
    ends().forEach(end -> ends.add(end.pin()));
    for (Part part : schematic.parts()) {
      if (!drawn.contains(part.ref())) {
        faults.add("missing-part", List.of(part.ref()), List.of());
      }
    }
    for (Net net : schematic.nets()) {
      for (Pin pin : net.pins()) {
        if (net.pins().size() > 1 && !ends.contains(pin)) {
          faults.add("missing-pin", List.of(pin.ref()), List.of(net.name()));
        }
      }
    }
  }

  private List<End> ends() {
    return drawing.figures().stream().flatMap(figure -> figure.ends().stream()).toList();
  }

  private void theNetlistIsTheSame() {
    var wanted = new TreeSet<String>();
    for (Net net : schematic.nets()) {
      if (net.pins().size() > 1) {
        wanted.add(new TreeSet<>(net.pins()).toString());
      }
    }
    if (!wanted.equals(ReadBack.nets(drawing))) {
      faults.add("other-netlist", List.of(), List.of());
    }
  }

  /** A net of one pin is a terminal, where its pin is drawn; no other net is. */
  private void openEndsHaveTerminals() {
    var open = new TreeMap<Pin, String>();
    schematic.nets().stream()
        .filter(net -> net.pins().size() == 1)
        .forEach(net -> open.put(net.pins().get(0), net.name()));
    var terminals = new ArrayList<String>();
    drawing.marks().stream()
        .filter(mark -> mark.kind().equals("terminal"))
        .forEach(mark -> terminals.add(mark.net() + mark.at()));
    for (End end : ends()) {
      String net = open.get(end.pin());
      if (net != null && !terminals.remove(net + end.at())) {
        faults.add("missing-terminal", List.of(end.pin().ref()), List.of(net));
      }
    }
    if (!terminals.isEmpty()) {
      faults.add("terminal-on-net", List.of(), List.copyOf(terminals));
    }
  }

  private void allIsInTheFrame() {
    Area frame = drawing.frame();
    boolean out =
        drawing.texts().stream().anyMatch(text -> !holds(frame, text.extent()))
            || drawing.figures().stream().anyMatch(figure -> !holds(frame, figure.body()))
            || drawing.wires().stream().anyMatch(wire -> !holds(frame, Lines.area(wire)));
    if (out) {
      faults.add("outside", List.of(), List.of());
    }
  }

  private static boolean holds(Area frame, Area area) {
    return area.x() >= frame.x()
        && area.y() >= frame.y()
        && area.right() <= frame.right()
        && area.bottom() <= frame.bottom();
  }
}
