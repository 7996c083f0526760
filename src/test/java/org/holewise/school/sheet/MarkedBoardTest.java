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
class MarkedBoardTest {

  @Test
  void thePictureOfTheReadmeIsWhatTheProductDraws() throws IOException {
    assertThat(Files.readString(Path.of("README.md"))).contains("(src/site/marked-board.svg)");
    assertThat(Files.readString(MarkedBoard.FILE))
        .as("run MarkedBoard to write it anew")
        .isEqualTo(MarkedBoard.svg());
  }

  @Test
  void itStandsAloneAndPointsAtTheSlip() throws Exception {
    String svg = MarkedBoard.svg();
    var document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(svg)));
    assertThat(document.getDocumentElement().getTagName()).isEqualTo("svg");
    assertThat(svg)
        .contains("class=\"ring\"", "class=\"dashed\"", "R1 10 kΩ", "b18 is a column off")
        .doesNotContain("var(", "href", " th:");
  }
}
