package org.holewise.school.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

@Tag("fast")
class SitePictureTest {

  @Test
  void theMarkedBoardIsWhatTheProductDraws() throws Exception {
    String svg = MarkedBoard.svg();
    isOnTheReadme(MarkedBoard.FILE, svg);
    standsAlone(svg);
    assertThat(svg)
        .contains("class=\"ring\"", "class=\"dashed\"", "R1 10 kΩ", "b18 is a column off");
  }

  @Test
  void theSchematicIsWhatTheProductDraws() throws Exception {
    String svg = DrawnSchematic.svg();
    isOnTheReadme(DrawnSchematic.FILE, svg);
    standsAlone(svg);
    assertThat(svg).contains("data-ref=\"Q1\"", "data-net=\"base\"", ">2.2 kΩ<");
    assertThat(svg).containsPattern("\\.schematic \\.probing \\{\\s*display: none;");
  }

  private static void isOnTheReadme(Path file, String svg) throws IOException {
    assertThat(Files.readString(Path.of("README.md"))).contains("(" + file + ")");
    assertThat(Files.readString(file))
        .as("run MarkedBoard or DrawnSchematic to write it anew")
        .isEqualTo(svg);
  }

  private static void standsAlone(String svg) throws Exception {
    var document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(svg)));
    assertThat(document.getDocumentElement().getTagName()).isEqualTo("svg");
    assertThat(svg).doesNotContain("var(", "href", " th:");
  }
}
