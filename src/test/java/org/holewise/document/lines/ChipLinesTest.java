package org.holewise.document.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.holewise.document.BuildDocument;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.ExerciseDraft;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A chip by the hole of its first pin, in lines and in documents. */
@Tag("fast")
class ChipLinesTest {
  private static final Exercise GATES =
      new ExerciseDraft().part("U1", "7400").part("R1", "resistor", "ohms", 390).exercise();

  private static Placed chip(String lines) {
    return BuildLines.read(lines, GATES).record().build().orElseThrow().placed().get(0);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"U1 e20", "u1 pin1=E20", "U1: 20e # notch left", "U1 pin1 = e-20", "U1 1=e20"})
  void oneHoleIsThatOfPinOne(String line) {
    assertThat(chip(line).pin1()).hasToString("Optional[e20]");
    assertThat(chip(line).hole("8")).hasToString("Optional[f26]");
    assertThat(BuildLines.read(line, GATES).sound()).isTrue();
  }

  @Test
  void itIsWrittenAsItWasGiven() {
    var record = BuildLines.read("U1 f26 marked 74HC00", GATES).record();
    String written = BuildLines.write(record, GATES);
    assertThat(written).isEqualTo("U1 pin1=f26 marked 74HC00\n");
    assertThat(BuildLines.read(written, GATES).record()).isEqualTo(record);
  }

  @Test
  void oneHoleIsTooFewForAnythingElse() {
    assertThat(BuildLines.read("R1 e20", GATES).lines().get(0).problem().orElseThrow().kind())
        .isEqualTo("lead-count");
  }

  @Test
  void aDocumentPlacesItTheSame() {
    String json = "{\"placed\": [{\"ref\": \"U1\", \"pin1\": \"e20\"}], \"links\": []}";
    var read = BuildDocument.json(json.getBytes(StandardCharsets.UTF_8), GATES);
    assertThat(read.orThrow().build().orElseThrow().placed()).containsExactly(chip("U1 e20"));
  }
}
