package org.holewise.school.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.holewise.engine.board.BuildCheck;
import org.holewise.school.sheet.Shipped;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.core.io.Resource;

@Tag("fast")
class ShippedExercisesTest {

  @Test
  void areFoundByTheirSlug() throws IOException {
    var library = new ShippedExercises();
    assertThat(library.exercises())
        .extracting(entry -> entry.exercise().slug())
        .containsExactlyElementsOf(Shipped.SLUGS);
    assertThat(library.find("stage-dimmer").orElseThrow().exercise().title())
        .isEqualTo("A divider for the dimmer");
    assertThat(library.find("curtain")).isEmpty();
  }

  @Test
  void haveAimNotesReadingsAndACheckedBuild() throws IOException {
    for (var entry : new ShippedExercises().exercises()) {
      assertThat(entry.exercise().aim()).isNotBlank();
      assertThat(entry.notes()).hasSizeGreaterThanOrEqualTo(3);
      assertThat(entry.exercise().readings()).hasSizeBetween(4, 6);
      assertThat(entry.checked().readings().keySet())
          .containsExactlyElementsOf(
              entry.exercise().readings().stream().map(reading -> reading.id()).toList());
      assertThat(entry.checked().build().orElseThrow().links()).isNotEmpty();
    }
  }

  @Test
  void haveNothingOddAboutTheirBuilds() throws IOException {
    for (var entry : new ShippedExercises().exercises()) {
      var build = entry.checked().build().orElseThrow();
      assertThat(BuildCheck.findings(build, entry.exercise().parts())).isEmpty();
    }
  }

  @Test
  void stopTheStartWhereOneIsMalformed() {
    assertThatThrownBy(() -> new ShippedExercises(file("lamp.yaml", "slug: lamp\nboard: '830'\n")))
        .hasMessageContaining("lamp.yaml is malformed")
        .hasMessageContaining("/parts");
  }

  @Test
  void stopTheStartWhereAFileIsNamedOtherwise() {
    String sound =
        "slug: lamp\nboard: '830'\nparts: [{ref: R1, kind: resistor, ohms: 5}]\nnets: {}\n";
    assertThatThrownBy(() -> new ShippedExercises(file("moon.yaml", sound)))
        .hasMessageContaining("moon.yaml has the slug lamp");
    assertThatThrownBy(() -> new ShippedExercises(file("lamp.yaml", sound)))
        .hasMessageContaining("cannot read the build beside lamp.yaml");
  }

  private static Resource file(String name, String text) {
    return new ByteArrayResource(text.getBytes(StandardCharsets.UTF_8)) {
      @Override
      public String getFilename() {
        return name;
      }
    };
  }
}
