package org.holewise.school.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import org.holewise.document.text.Messages;
import org.holewise.document.text.Texts;
import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.marking.Mark;
import org.holewise.school.sheet.KeptMark.Told;
import org.holewise.school.trial.StartingPoint;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

@Tag("fast")
class KeptMarkTest {
  static final Iterable<String> SLUGS = Shipped.SLUGS;

  @ParameterizedTest
  @FieldSource("SLUGS")
  void holdsWhatTheMarkHeld(String slug) {
    for (StartingPoint start : Shipped.starts(slug)) {
      Mark mark = Shipped.mark(slug, start.lines());
      KeptMark kept = KeptMark.read(Shipped.document(slug, start.lines(), mark));
      assertThat(kept.engine()).isEqualTo(mark.engine());
      assertThat(kept.points()).isEqualTo(mark.marks());
      assertThat(kept.wiringMatches()).isEqualTo(mark.wiring().matches());
      assertThat(kept.differences()).hasSameSizeAs(mark.wiring().differences());
      assertThat(kept.suspects().stream().map(Told::what).map(Suspect::place))
          .isEqualTo(mark.diagnosis().suspects().stream().map(Suspect::place).toList());
      assertThat(kept.suspects().stream().map(Told::what).map(Suspect::alike))
          .isEqualTo(mark.diagnosis().suspects().stream().map(Suspect::alike).toList());
      assertThat(kept.next().map(Told::what).map(NextReading::measure))
          .isEqualTo(mark.diagnosis().next().map(NextReading::measure));
      assertThat(kept.readings())
          .extracting(r -> r.verdict())
          .isEqualTo(mark.readings().stream().map(r -> r.verdict()).toList());
      assertThat(kept.cautions()).hasSameSizeAs(mark.cautions());
    }
  }

  /** From what was read back the same sentences are made, so that none has to be cut. */
  @Test
  void suspectsReadBackAreSaidInTheSameWords() {
    for (MarkedCase marked : MarkedCase.all()) {
      var texts = new Texts(Messages.english(), marked.exercise(), marked.record().build(), true);
      List<Suspect> all = marked.kept().suspects().stream().map(Told::what).toList();
      for (Told<Suspect> suspect : marked.kept().suspects()) {
        assertThat(texts.suspect(suspect.what(), all)).as(marked.name()).isEqualTo(suspect.text());
      }
    }
  }

  @Test
  void passesOverFieldsThatItDoesNotKnow() {
    MarkedCase marked = MarkedCase.all().get(0);
    String later =
        marked.document().replaceFirst("\\{", "{\"later\": {\"a\": [1, null]}, \"next2\": 3,");
    assertThat(KeptMark.read(later)).isEqualTo(marked.kept());
  }

  @Test
  void whatWasLeftOutIsEmpty() {
    KeptMark kept = KeptMark.read("{\"engine\": \"0.9\"}");
    assertThat(kept.readings()).isEmpty();
    assertThat(kept.next()).isEqualTo(Optional.empty());
    assertThat(kept.points().of()).isZero();
  }

  @Test
  void whatIsNoDocumentIsRefused() {
    for (String text : new String[] {"", "[]", "{\"engine\":", "mark"}) {
      assertThatIllegalArgumentException().isThrownBy(() -> KeptMark.read(text));
    }
  }
}
