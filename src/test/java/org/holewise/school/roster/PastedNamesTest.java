package org.holewise.school.roster;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import org.holewise.school.roster.PastedNames.Problem;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class PastedNamesTest {

  @Test
  void areOneALine() {
    var read = PastedNames.read("Wren\r\n\n  Sorrel \t B.\nLinden\n\n");
    assertThat(read.names()).containsExactly("Wren", "Sorrel B.", "Linden");
    assertThat(read.problems()).isEmpty();
  }

  @Test
  void mayBeTheSame() {
    assertThat(PastedNames.read("Wren\nWren").names()).containsExactly("Wren", "Wren");
  }

  @Test
  void areOneAtLeast() {
    for (String nothing : new String[] {"", "  ", "\n\t\n\u200b"}) {
      assertThat(PastedNames.read(nothing).problems())
          .containsExactly(new Problem("students.missing", 1));
    }
  }

  @Test
  void haveAtMost100CharactersElseTheirLineIsNamed() {
    var read = PastedNames.read("W".repeat(100) + "\n\n" + "S".repeat(101) + "\nLinden");
    assertThat(read.problems()).containsExactly(new Problem("students.line.long", 3));
  }

  @Test
  void areAtMostSixtyElseTheFirstLineTooManyIsNamed() {
    String sixty = "\n" + String.join("\n", Collections.nCopies(60, "Wren"));
    assertThat(PastedNames.read(sixty).problems()).isEmpty();
    assertThat(PastedNames.read(sixty).names()).hasSize(60);
    assertThat(PastedNames.read(sixty + "\nSorrel\nLinden").problems())
        .containsExactly(new Problem("students.line.many", 62));
  }
}
