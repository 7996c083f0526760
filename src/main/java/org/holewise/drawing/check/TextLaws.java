package org.holewise.drawing.check;

import java.util.List;
import java.util.stream.Stream;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawing.End;
import org.holewise.drawing.sheet.Drawing.Figure;
import org.holewise.drawing.sheet.Drawing.Mark;
import org.holewise.drawing.sheet.Drawing.Text;
import org.holewise.drawing.sheet.Drawing.Wire;
import org.holewise.drawing.sheet.TextSize;

/** Texts cover nothing and no other text. */
final class TextLaws {
  private final Drawing drawing;
  private final Faults faults;

  private TextLaws(Drawing drawing, Faults faults) {
    this.drawing = drawing;
    this.faults = faults;
  }

  static void judge(Drawing drawing, Faults faults) {
    var laws = new TextLaws(drawing, faults);
    laws.textsCoverNothing();
  }

  private void textsCoverNothing() {
    List<Text> texts = drawing.texts();
    for (int i = 0; i < texts.size(); i++) {
      Text text = texts.get(i);
      for (int j = 0; j < i; j++) {
        if (text.extent().meets(texts.get(j).extent())) {
          faults.add("texts-meet", of(text, texts.get(j)), List.of());
        }
      }
      boolean inner = text.style() == TextSize.PIN || text.style() == TextSize.NUMBER;
      for (Figure figure : drawing.figures()) {
        if (!(inner && figure.ref().equals(text.ref()))
            && figure.solid().stream().anyMatch(area -> area.meets(text.extent()))) {
          faults.add("text-on-body", List.of(text.ref(), figure.ref()), List.of());
        }
        for (End end : figure.ends()) {
          if (Lines.area(end.at(), end.root()).meets(text.extent())) {
            faults.add("text-on-lead", List.of(text.ref(), figure.ref()), List.of());
          }
        }
      }
      for (Wire wire : drawing.wires()) {
        if (Lines.area(wire).meets(text.extent())) {
          faults.add("text-on-wire", of(text), List.of(wire.net()));
        }
      }
      for (Mark mark : drawing.marks()) {
        if (mark.body().meets(text.extent())) {
          faults.add("text-on-mark", of(text), List.of(mark.net()));
        }
      }
    }
  }

  private static List<String> of(Text... texts) {
    return Stream.of(texts).map(Text::ref).filter(ref -> !ref.isEmpty()).toList();
  }
}
