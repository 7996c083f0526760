package org.holewise.school.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.holewise.school.sheet.TypedBuild.Note;
import org.holewise.school.trial.StartingPoints;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class TypedBuildTest {
  private static final String SLUG = "stage-moonlight";

  private static TypedBuild read(String text) {
    return TypedBuild.read(text, Shipped.exercise(SLUG));
  }

  @Test
  void aPastedBuildIsReadAsTheSameAsItsLines() {
    TypedBuild pasted = read("\n  " + Shipped.file(SLUG + "-build.json"));
    assertThat(pasted.ready()).isTrue();
    assertThat(pasted.record())
        .isEqualTo(read(Shipped.lines(SLUG, StartingPoints.CHECKED)).record());
  }

  @Test
  void aBuildMayBePastedAsYaml() {
    TypedBuild pasted =
        read(
            """
            exercise: stage-moonlight
            board: "830-split"
            placed:
              - {ref: R1, holes: {"1": b10, "2": b15}}
            """);
    assertThat(pasted.ready()).isTrue();
    assertThat(pasted.record().orElseThrow().build().orElseThrow().placed()).hasSize(1);
  }

  @Test
  void aPastedBuildThatIsMalformedIsKeptWithEveryWrongPlace() {
    String text =
        """
        {"placed": [{"ref": "R1", "holes": {"1": "z99", "2": "b15"}}], "links": [["a1"]]}""";
    TypedBuild pasted = read(text);
    assertThat(pasted.ready()).isFalse();
    assertThat(pasted.text()).isEqualTo(text);
    assertThat(pasted.wrong())
        .extracting(Note::quoted)
        .containsExactly("/placed/0/holes/1", "/links/0");
  }

  @Test
  void whatIsOddStandsBesideItsLineAndDoesNotHinderTheMark() {
    TypedBuild typed = read("# a note\nR1 b10 b14\nD1 c14 c99\nS1 b10 d21\nboard 830");
    assertThat(typed.ready()).isTrue();
    assertThat(typed.odd()).extracting(Note::line).containsExactly(3, 4, 5);
    assertThat(typed.odd()).extracting(Note::quoted).contains("D1 c14 c99");
    assertThat(typed.odd().get(0).text()).contains("c99");
  }

  @Test
  void wrongLinesMustBePutRightFirst() {
    TypedBuild typed = read("R1 b10 b15\nR9 a1 a2\nD1 c15");
    assertThat(typed.ready()).isFalse();
    assertThat(typed.wrongLines()).containsExactly(2, 3);
  }

  @Test
  void partsNotYetPlacedAreNoNewsWhileOneTypes() {
    assertThat(read("R1 b10 b15").notes()).isEmpty();
    assertThat(read("").notes()).isEmpty();
  }

  @Test
  void farTooMuchTextIsRefusedAndKept() {
    String text = "# note\n".repeat(TypedBuild.LONGEST);
    TypedBuild typed = read(text);
    assertThat(typed.ready()).isFalse();
    assertThat(typed.text()).isEqualTo(text);
    assertThat(typed.wrong()).hasSize(1);
  }
}
