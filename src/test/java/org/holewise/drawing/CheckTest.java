package org.holewise.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.holewise.drawing.check.Check;
import org.holewise.drawing.circuit.Schematic;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawing.Dot;
import org.holewise.drawing.sheet.Drawing.End;
import org.holewise.drawing.sheet.Drawing.Figure;
import org.holewise.drawing.sheet.Drawing.Mark;
import org.holewise.drawing.sheet.Drawing.Text;
import org.holewise.drawing.sheet.Drawing.Wire;
import org.holewise.drawing.sheet.SymbolStyle;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Who drops or moves anything in a sound drawing is found out. */
@Tag("fast")
class CheckTest {
  private static final int STEP = 10;

  static Stream<Arguments> drawings() throws IOException {
    return ShippedSchematics.all().entrySet().stream()
        .map(
            entry ->
                Arguments.of(
                    entry.getKey(),
                    entry.getValue(),
                    DrawingLawsTest.drawn(entry.getValue(), SymbolStyle.IEC)));
  }

  private static void found(Schematic schematic, Drawing changed, Object what) {
    assertThat(Check.faults(schematic, changed)).as("%s", what).isNotEmpty();
  }

  private static <T> void each(List<T> all, Consumer<Integer> test) {
    for (int i = 0; i < all.size(); i++) {
      test.accept(i);
    }
  }

  private static <T> List<T> without(List<T> all, int index) {
    var rest = new ArrayList<>(all);
    rest.remove(index);
    return rest;
  }

  private static <T> List<T> with(List<T> all, int index, T other) {
    var changed = new ArrayList<>(all);
    changed.set(index, other);
    return changed;
  }

  private static Drawing changed(
      Drawing drawing, List<Figure> figures, List<Wire> wires, List<Dot> dots, List<Text> texts) {
    return new Drawing(
        drawing.style(), drawing.frame(), figures, wires, dots, drawing.marks(), texts);
  }

  private static Drawing wires(Drawing drawing, List<Wire> wires) {
    return changed(drawing, drawing.figures(), wires, drawing.dots(), drawing.texts());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void aWireThatIsDroppedMovedOrCutIsMissed(String name, Schematic schematic, Drawing drawing) {
    each(
        drawing.wires(),
        i -> {
          Wire wire = drawing.wires().get(i);
          boolean level = wire.from().y() == wire.to().y();
          int dx = level ? 0 : STEP;
          int dy = level ? STEP : 0;
          var moved = new Wire(wire.net(), wire.from().plus(dx, dy), wire.to().plus(dx, dy));
          var cut = new Wire(wire.net(), wire.from(), wire.to().plus(-dy, -dx));
          var oblique = new Wire(wire.net(), wire.from(), wire.to().plus(dx, dy));
          found(schematic, wires(drawing, without(drawing.wires(), i)), wire);
          found(schematic, wires(drawing, with(drawing.wires(), i, moved)), moved);
          found(schematic, wires(drawing, with(drawing.wires(), i, cut)), cut);
          found(schematic, wires(drawing, with(drawing.wires(), i, oblique)), oblique);
        });
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void aFigureThatIsDroppedOrMovedIsMissed(String name, Schematic schematic, Drawing drawing) {
    each(
        drawing.figures(),
        i -> {
          Figure figure = drawing.figures().get(i);
          for (var figures :
              List.of(
                  without(drawing.figures(), i),
                  with(drawing.figures(), i, moved(figure, STEP, 0)),
                  with(drawing.figures(), i, moved(figure, 0, STEP)))) {
            found(
                schematic,
                changed(drawing, figures, drawing.wires(), drawing.dots(), drawing.texts()),
                figure);
          }
        });
  }

  private static Figure moved(Figure figure, int dx, int dy) {
    return new Figure(
        figure.ref(),
        figure.kind(),
        figure.unit(),
        figure.body().moved(dx, dy),
        figure.solid().stream().map(area -> area.moved(dx, dy)).toList(),
        figure.strokes(),
        figure.ends().stream()
            .map(
                end ->
                    new End(end.pin(), end.net(), end.at().plus(dx, dy), end.root().plus(dx, dy)))
            .toList());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void aDotTooFewOrInAWrongPlaceIsNoticed(String name, Schematic schematic, Drawing drawing) {
    each(
        drawing.dots(),
        i -> {
          Dot dot = drawing.dots().get(i);
          var moved = new Dot(dot.net(), dot.at().plus(STEP, 0));
          for (var dots : List.of(without(drawing.dots(), i), with(drawing.dots(), i, moved))) {
            found(
                schematic,
                changed(drawing, drawing.figures(), drawing.wires(), dots, drawing.texts()),
                dot);
          }
        });
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void aTextOnAnythingIsNoticed(String name, Schematic schematic, Drawing drawing) {
    Text text =
        drawing.texts().stream()
            .filter(each -> each.styleName().equals("ref"))
            .findFirst()
            .orElseThrow();
    int index = drawing.texts().indexOf(text);
    for (Figure figure : drawing.figures()) {
      var on = figure.solid().get(0);
      double dx = on.x() - text.extent().x();
      double dy = on.y() - text.extent().y();
      found(schematic, texts(drawing, index, moved(text, dx, dy)), figure.ref());
    }
    for (Wire wire : drawing.wires()) {
      double dx = wire.from().x() - text.extent().x() - 1;
      double dy = wire.from().y() - text.extent().y() - 1;
      found(schematic, texts(drawing, index, moved(text, dx, dy)), wire);
    }
  }

  private static Text moved(Text text, double dx, double dy) {
    return new Text(
        text.text(),
        text.style(),
        text.ref(),
        text.net(),
        text.x() + dx,
        text.baseline() + dy,
        text.anchor(),
        text.extent().moved(dx, dy));
  }

  private static Drawing texts(Drawing drawing, int index, Text text) {
    return changed(
        drawing,
        drawing.figures(),
        drawing.wires(),
        drawing.dots(),
        with(drawing.texts(), index, text));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void aSymbolThatIsDroppedIsMissed(String name, Schematic schematic, Drawing drawing) {
    each(
        drawing.marks(),
        i -> {
          List<Mark> marks = without(drawing.marks(), i);
          var changed =
              new Drawing(
                  drawing.style(),
                  drawing.frame(),
                  drawing.figures(),
                  drawing.wires(),
                  drawing.dots(),
                  marks,
                  drawing.texts());
          found(schematic, changed, drawing.marks().get(i));
        });
  }
}
