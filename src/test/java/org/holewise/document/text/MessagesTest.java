package org.holewise.document.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class MessagesTest {
  private static final Messages ENGLISH = Messages.english();
  private static final ResourceBundle ALL =
      ResourceBundle.getBundle("org.holewise.document.messages", Locale.ROOT);

  @Test
  void everySentenceCanBeFilledIn() {
    assertThat(ALL.keySet()).hasSizeGreaterThan(150);
    for (String key : ALL.keySet()) {
      assertThat(ENGLISH.say(key, "a", "b", "c", "d", "e"))
          .as(key)
          .isNotBlank()
          .doesNotContain("{", "}", "''");
    }
  }

  @Test
  void sentencesAreCalmAndGiveNothingAway() {
    for (String key : ALL.keySet()) {
      String sentence = ALL.getString(key).toLowerCase(Locale.ROOT);
      assertThat(sentence)
          .as(key)
          .doesNotContain("invalid", "error occurred", "oops", "%", "probab", "expected");
    }
  }

  @Test
  void sentencesEndAsSentences() {
    for (String key : ALL.keySet()) {
      if (key.matches(
              "(problem|finding|repair\\.(move|end|add|remove|place)|suspect|act|caution).*")
          && !key.equals("repair.any-free")) {
        assertThat(ALL.getString(key)).as(key).matches("(?s).*[.?}]");
      }
    }
  }

  @Test
  void partsArePutInAsTheyAre() {
    assertThat(ENGLISH.say("problem.unknown-ref", "{1}")).contains("part {1} in");
  }

  @Test
  void aMissingSentenceIsAProgrammersMistake() {
    assertThatThrownBy(() -> ENGLISH.say("no.such.key")).hasMessageContaining("no.such.key");
    assertThat(ENGLISH.find("no.such.key")).isEmpty();
  }

  @Test
  void anotherLanguageFallsBackToEnglish() {
    assertThat(Messages.in(Locale.JAPANESE).say("verdict.within")).isEqualTo("fits");
  }
}
