package org.holewise.drawing.check;

import java.util.List;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawing.End;
import org.holewise.drawing.sheet.Drawing.Figure;
import org.holewise.drawing.sheet.Drawing.Mark;

/** Figures keep apart, their bodies and their leads. */
final class FigureLaws {
  private final Drawing drawing;
  private final Faults faults;

  private FigureLaws(Drawing drawing, Faults faults) {
    this.drawing = drawing;
    this.faults = faults;
  }

  static void judge(Drawing drawing, Faults faults) {
    var laws = new FigureLaws(drawing, faults);
    laws.bodiesAreApart();
    laws.leadsAreApart();
  }

  private void bodiesAreApart() {
    List<Figure> figures = drawing.figures();
    for (int i = 0; i < figures.size(); i++) {
      for (int j = 0; j < i; j++) {
        Figure a = figures.get(i);
        Figure b = figures.get(j);
        if (a.body().meets(b.body())) {
          faults.add("bodies-meet", List.of(a.ref(), b.ref()), List.of());
        }
      }
      for (Mark mark : drawing.marks()) {
        if (figures.get(i).body().meets(mark.body())) {
          faults.add("bodies-meet", List.of(figures.get(i).ref()), List.of(mark.net()));
        }
      }
    }
    for (int i = 0; i < drawing.marks().size(); i++) {
      for (int j = 0; j < i; j++) {
        if (drawing.marks().get(i).body().meets(drawing.marks().get(j).body())) {
          faults.add("marks-meet", List.of(), List.of(drawing.marks().get(i).net()));
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
              faults.add("lead-on-body", List.of(figure.ref(), other.ref()), List.of());
            }
            for (End its : other.ends()) {
              boolean same = its.at().equals(end.at());
              boolean joined = same && !end.net().isEmpty() && end.net().equals(its.net());
              if (!joined && Lines.area(its.at(), its.root()).meets(lead)) {
                faults.add("leads-meet", List.of(figure.ref(), other.ref()), List.of());
              }
            }
          }
        }
      }
    }
  }
}
