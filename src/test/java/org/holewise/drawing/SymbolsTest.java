package org.holewise.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.holewise.drawing.circuit.Schematic;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawing.End;
import org.holewise.drawing.sheet.SymbolStyle;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Field;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Kind;
import org.holewise.engine.part.Network;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.part.Registry;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every kind has a symbol that shows all its pins on the grid, kinds that nobody knows yet too. */
@Tag("fast")
class SymbolsTest {
  private static final int GRID = 10;

  static Stream<String> kinds() {
    return Registry.kinds().stream().map(Kind::name);
  }

  /** Each pin of the part goes to a resistor of its own, so that all are wired. */
  private static Schematic wired(Part part) {
    var parts = new ArrayList<Part>(List.of(part));
    var nets = new ArrayList<Net>();
    for (Pin pin : part.pins()) {
      Part resistor = FirstCourse.part("R" + parts.size(), "resistor");
      parts.add(resistor);
      nets.add(new Net("n" + parts.size(), List.of(pin, resistor.pin("1"))));
    }
    return new Schematic(parts, nets, Map.of());
  }

  private static void showsAllPins(Part part, SymbolStyle style) {
    Drawing drawing = DrawingLawsTest.drawn(wired(part), style);
    List<End> ends =
        drawing.figures().stream()
            .filter(figure -> figure.ref().equals(part.ref()))
            .flatMap(figure -> figure.ends().stream())
            .toList();
    assertThat(ends).extracting(End::pin).containsExactlyInAnyOrderElementsOf(part.pins());
    assertThat(ends)
        .allMatch(end -> end.at().x() % GRID == 0 && end.at().y() % GRID == 0, "on the grid");
    assertThat(drawing.figures()).allMatch(figure -> !figure.strokes().isEmpty());
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void everyKindShowsAllItsPins(String kind) {
    for (SymbolStyle style : SymbolStyle.values()) {
      showsAllPins(FirstCourse.part("X1", kind), style);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5, 9})
  void aKindWithoutASymbolIsABoxWithItsPins(int pins) {
    for (SymbolStyle style : SymbolStyle.values()) {
      showsAllPins(new Part("X1", new Unheard(pins), Fields.NONE), style);
    }
  }

  /** A kind that was added after the symbols. */
  private record Unheard(int count) implements Kind {
    @Override
    public String name() {
      return "unheard-of";
    }

    @Override
    public List<Field> fields() {
      return List.of();
    }

    @Override
    public List<String> pins(Fields fields) {
      return Stream.iterate(1, i -> i + 1).limit(count).map(i -> "p" + i).toList();
    }

    @Override
    public void connect(Part part, Network network) {}

    @Override
    public Footprint footprint(Fields fields) {
      return new Footprint.InLine(count);
    }
  }
}
