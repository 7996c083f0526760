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
class DrawnSchematicTest {

  @Test
  void thePictureOfTheReadmeIsWhatTheProductDraws() throws IOException {
    assertThat(Files.readString(Path.of("README.md"))).contains("(src/site/schematic.svg)");
    assertThat(Files.readString(DrawnSchematic.FILE))
        .as("run DrawnSchematic to write it anew")
        .isEqualTo(DrawnSchematic.svg());
  }

  @Test
  void itStandsAloneAndNamesItsParts() throws Exception {
    String svg = DrawnSchematic.svg();
    var document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(svg)));
    assertThat(document.getDocumentElement().getTagName()).isEqualTo("svg");
    assertThat(svg)
        .contains("data-ref=\"Q1\"", "data-net=\"base\"", ">2.2 kΩ<")
        .doesNotContain("var(", "href", " th:");
  }
}
