package org.holewise.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.holewise.drawing.check.Check;
import org.holewise.drawing.check.ReadBack;
import org.holewise.drawing.circuit.Schematic;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawn;
import org.holewise.drawing.sheet.SymbolStyle;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The laws of a drawing, for every exercise that comes along and circuits of first courses, with
 * both kinds of symbols. What the laws are says {@link Check}, which has a test of its own.
 */
@Tag("fast")
class DrawingLawsTest {
  private static final int LEAST_CIRCUITS = 42;

  static Stream<Arguments> drawings() throws IOException {
    return circuits().entrySet().stream()
        .flatMap(
            entry ->
                Stream.of(SymbolStyle.values())
                    .map(style -> Arguments.of(entry.getKey(), entry.getValue(), style)));
  }

  private static Map<String, Schematic> circuits() throws IOException {
    var circuits = new LinkedHashMap<>(ShippedSchematics.all());
    circuits.putAll(FirstCourse.all());
    return circuits;
  }

  static Drawing drawn(Schematic schematic, SymbolStyle style) {
    var drawn = SchematicDrawing.of(schematic, style);
    assertThat(drawn).isInstanceOf(Drawn.Done.class);
    return ((Drawn.Done) drawn).drawing();
  }

  @ParameterizedTest(name = "{0} {2}")
  @MethodSource("drawings")
  void itIsCleanAndTheSameTwice(String name, Schematic schematic, SymbolStyle style) {
    var drawing = drawn(schematic, style);
    assertThat(Check.faults(schematic, drawing)).isEmpty();
    assertThat(drawn(schematic, style)).isEqualTo(drawing).hasToString(drawing.toString());
  }

  @ParameterizedTest(name = "{0} {2}")
  @MethodSource("drawings")
  void itSaysWhatTheSchematicSays(String name, Schematic schematic, SymbolStyle style) {
    var wanted = new TreeSet<String>();
    schematic.nets().stream()
        .filter(net -> net.pins().size() > 1)
        .forEach(net -> wanted.add(new TreeSet<>(net.pins()).toString()));
    assertThat(wanted).isNotEmpty();
    assertThat(ReadBack.nets(drawn(schematic, style))).isEqualTo(wanted);
  }

  /** As a book draws an output, or a wiper that only a meter touches. */
  @ParameterizedTest
  @EnumSource
  void aNetOfOnePinEndsInARingWithItsName(SymbolStyle style) throws IOException {
    var drawing = drawn(ShippedSchematics.all().get("stage-twilight.yaml"), style);
    var rings = drawing.marks().stream().filter(mark -> mark.kind().equals("terminal")).toList();
    assertThat(rings).singleElement().extracting(Drawing.Mark::net).isEqualTo("threshold");
    assertThat(drawing.texts()).extracting(Drawing.Text::text).contains("threshold");
  }

  @Test
  void thereAreManyCircuits() throws IOException {
    assertThat(circuits()).hasSizeGreaterThan(LEAST_CIRCUITS);
  }
}
