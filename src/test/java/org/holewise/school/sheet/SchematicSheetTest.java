package org.holewise.school.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.holewise.drawing.sheet.Drawn.Undrawable;
import org.holewise.drawing.sheet.Drawn.Why;
import org.holewise.drawing.sheet.SymbolStyle;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Part;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

@Tag("fast")
class SchematicSheetTest {

  private static final Schematics IEC = new Schematics(SymbolStyle.IEC);

  @ParameterizedTest
  @FieldSource("org.holewise.school.sheet.Shipped#SLUGS")
  void anExerciseIsDrawnWithEveryPartAndNet(String slug) throws Exception {
    Exercise exercise = Shipped.exercise(slug);
    Document svg = read(svg(IEC.of(exercise)));
    assertThat(svg.getDocumentElement().getTagName()).isEqualTo("svg");
    assertThat(values(svg, "data-ref"))
        .isEqualTo(exercise.parts().stream().map(Part::ref).toList());
    assertThat(values(svg, "data-net")).isEqualTo(exercise.nets().stream().map(Net::name).toList());
    assertThat(svg.getDocumentElement().getTextContent())
        .contains(exercise.parts().stream().map(Part::ref).toList());
  }

  /** A stroke without a rule would not be seen at all. */
  @ParameterizedTest
  @FieldSource("org.holewise.school.sheet.Shipped#SLUGS")
  void theStyleSheetKnowsEveryStroke(String slug) throws Exception {
    String sheet = Files.readString(Path.of("src/main/resources/static/css/schematic.css"));
    Document svg = read(svg(IEC.of(Shipped.exercise(slug))));
    List<String> strokes =
        elements(svg).stream()
            .filter(one -> one.getTagName().equals("path") && one.hasAttribute("class"))
            .map(one -> one.getAttribute("class"))
            .toList();
    assertThat(strokes).contains("line", "wire");
    assertThat(strokes)
        .allSatisfy(
            stroke -> assertThat(sheet).containsPattern("\\.schematic [^{}]*\\." + stroke + "\\b"));
  }

  @ParameterizedTest
  @FieldSource("org.holewise.school.sheet.Shipped#SLUGS")
  void eachReadingWithAPointIsMarkedAtThePointsThatItNames(String slug) {
    Exercise exercise = Shipped.exercise(slug);
    var picture = IEC.of(exercise).picture().orElseThrow();
    assertThat(picture.probings())
        .extracting(SchematicPicture.ProbingShape::reading)
        .containsExactlyElementsOf(
            exercise.readings().stream()
                .filter(reading -> !reading.measure().points().isEmpty())
                .map(reading -> reading.id())
                .toList());
  }

  @Test
  void redIsARingWithItsLetterAndBlackASquare() throws Exception {
    Document svg = read(svg(IEC.of(Shipped.exercise("stage-cue"))));
    Element supply =
        elements(svg).stream()
            .filter(one -> one.getAttribute("data-probing").equals("supply"))
            .findFirst()
            .orElseThrow();
    assertThat(supply.getTextContent().replaceAll("\\s+", "")).isEqualTo("RB");
    assertThat(supply.getElementsByTagName("circle").getLength()).isEqualTo(1);
    assertThat(supply.getElementsByTagName("path").getLength()).isEqualTo(1);
  }

  /** IEC 60617-4 draws a resistor as a box, ANSI Y32.2 as a zigzag. */
  @ParameterizedTest
  @EnumSource
  void theSchoolsSymbolsAreDrawn(SymbolStyle style) {
    var exercise = Shipped.exercise("stage-bridge");
    var strokes =
        new Schematics(style)
            .of(exercise).picture().orElseThrow().parts().stream()
                .filter(part -> part.ref().equals("R1"))
                .flatMap(part -> part.strokes().stream())
                .toList();
    assertThat(strokes).isNotEmpty();
    assertThat(strokes.stream().anyMatch(stroke -> stroke.d().endsWith("Z")))
        .isEqualTo(style == SymbolStyle.IEC);
  }

  @Test
  void aReadingHasItsPointsForTheBoardThoughNothingCanBeDrawn() {
    var exercise = Shipped.exercise("stage-cue");
    var sheet =
        SchematicSheet.of(exercise, new Undrawable(Why.UNCLEAN, List.of("R1"), List.of("base")));
    assertThat(sheet.probings().get(0).reading()).isEqualTo("supply");
    assertThat(sheet.probings().get(0).touches())
        .extracting(touch -> touch.lead() + " " + touch.letter() + " " + touch.pin())
        .containsExactly("red R B1.+", "black B B1.-");
    assertThat(sheet.probings()).extracting(Probing::reading).doesNotContain("lamp-on");
  }

  @Test
  void aVersionIsDrawnOnce() {
    var schematics = new Schematics(SymbolStyle.IEC);
    var exercise = Shipped.exercise("stage-bridge");
    assertThat(schematics.of(exercise)).isSameAs(schematics.of(exercise));
  }

  @Test
  void whatCannotBeDrawnIsSaidInWordsUnfolded() {
    var exercise = Shipped.exercise("stage-cue");
    var sheet =
        SchematicSheet.of(exercise, new Undrawable(Why.UNCLEAN, List.of("R1"), List.of("base")));
    String html = Rendered.html("sheet/schematic", "figure", Map.of("schematic", sheet));
    assertThat(html)
        .doesNotContain("class=\"schematic\"")
        .contains("no clear drawing", "<details class=\"schematic-words\" open");
    String drawn =
        Rendered.html("sheet/schematic", "figure", Map.of("schematic", IEC.of(exercise)));
    assertThat(drawn)
        .contains("class=\"schematic\"", "<details class=\"schematic-words\">")
        .doesNotContain("no clear drawing");
    assertThat(Rendered.words("sheet/schematic", "figure", Map.of("schematic", sheet)))
        .contains(
            "K1 push button : 1 on supply, 2 on pressed ; not used: 1a, 2a",
            "base R1\u00a02, R2\u00a01, Q1\u00a0b");
  }

  private static String svg(SchematicSheet sheet) {
    return Rendered.html(
        "fragments/schematic",
        "schematic",
        Map.of(
            "picture", sheet.picture().orElseThrow(), "id", "s", "title", "t", "description", "d"));
  }

  private static Document read(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg.strip())));
  }

  private static List<String> values(Document svg, String attribute) {
    return elements(svg).stream()
        .filter(one -> one.hasAttribute(attribute))
        .map(one -> one.getAttribute(attribute))
        .toList();
  }

  private static List<Element> elements(Document svg) {
    var all = svg.getElementsByTagName("*");
    return IntStream.range(0, all.getLength()).mapToObj(i -> (Element) all.item(i)).toList();
  }
}
