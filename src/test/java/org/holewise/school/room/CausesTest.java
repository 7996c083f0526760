package org.holewise.school.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.school.handin.Taught;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The kinds of causes that may be confirmed. */
@Tag("fast")
class CausesTest {

  private static final ResourceBundle TEXTS = ResourceBundle.getBundle("messages", Locale.ENGLISH);

  @Test
  void haveATextEach() {
    assertThat(Causes.KINDS)
        .doesNotHaveDuplicates()
        .allSatisfy(kind -> assertThat(TEXTS.containsKey("fault." + kind)).as(kind).isTrue());
  }

  @Test
  void teachSomethingEachAndTogetherOfEveryFamily() {
    assertThat(Causes.KINDS).allMatch(kind -> Taught.family(kind, false).isPresent());
    var taught = EnumSet.of(Taught.family("open-contact", true).orElseThrow());
    Causes.KINDS.forEach(kind -> taught.add(Taught.family(kind, false).orElseThrow()));
    assertThat(taught).containsExactly(Family.values());
  }

  @Test
  void areOfFamiliesThatHaveATextEach() {
    assertThat(EnumSet.complementOf(EnumSet.of(Family.NONE)))
        .allMatch(family -> TEXTS.containsKey("right.family." + family));
  }

  @Test
  void ofALinksContactAreCountedApart() {
    assertThat(Taught.family("open-contact", false)).contains(Family.LEAD_CONTACT);
    assertThat(Taught.family("open-contact", true)).contains(Family.LINK_CONTACT);
    assertThat(Taught.family("wrong-hole", true)).contains(Family.WRONG_HOLE);
  }

  @Test
  void thatTheRecordShowsHideNothing() {
    for (String kind : List.of("column-off", "link-missing", "link-too-many", "part-missing")) {
      assertThat(Taught.onRecord(kind)).as(kind).isTrue();
      assertThat(Taught.family(kind, false)).contains(Family.NONE);
    }
    assertThat(Taught.onRecord("none")).isFalse();
    assertThat(Taught.onRecord("touching")).isFalse();
    assertThat(Taught.family("something new", false)).isEmpty();
  }
}
