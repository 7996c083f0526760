package org.holewise.school.account;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class TypedNameTest {

  @Test
  void hasNoSpaceRoundItAndOneBetweenWords() {
    assertThat(TypedName.tidy(" Wren\t\u00a0 Sorrel \r")).isEqualTo("Wren Sorrel");
  }

  @Test
  void hasNothingUnseen() {
    // U+202E turns the letters behind it round; U+200B is a space of no width (Unicode, UAX #9).
    assertThat(TypedName.tidy("Wr\u202een\u200b\u0000")).isEqualTo("Wren");
    assertThat(TypedName.tidy("\u200b")).isEmpty();
  }

  @Test
  void keepsJoinersThatSomeScriptsNeed() {
    // U+200C stands inside Persian words (Unicode Standard, 23.2).
    assertThat(TypedName.tidy("\u0645\u06cc\u200c\u062e")).isEqualTo("\u0645\u06cc\u200c\u062e");
  }
}
