package org.holewise.school.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.diagnosis.Priors.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a table has learnt against the shipped one. */
@Tag("fast")
class LeaningTest {

  @Test
  void isNoneInTheShippedTable() {
    var leanings = Leaning.of(Priors.start());
    assertThat(leanings).hasSameSizeAs(Priors.start().shares().keySet());
    assertThat(Leaning.moved(leanings, true)).isEmpty();
    assertThat(Leaning.moved(leanings, false)).isEmpty();
    assertThat(Leaning.ofNothingWrong(Priors.start()).isWorthSaying()).isFalse();
    assertThat(leanings.stream().mapToDouble(Leaning::start).sum()).isCloseTo(100, within(1e-9));
  }

  @Test
  void saysWhatCameOftenerFirst() {
    var now = Priors.learnt("x", Map.of(Family.LEAD_CONTACT, 20, Family.DEAD_PART, 6), 0);
    var leanings = Leaning.of(now);
    assertThat(leanings.get(0).family()).isEqualTo(Family.LEAD_CONTACT);
    assertThat(leanings.stream().mapToDouble(Leaning::now).sum()).isCloseTo(100, within(1e-9));
    assertThat(Leaning.moved(leanings, true))
        .extracting(Leaning::family)
        .containsExactly(Family.LEAD_CONTACT, Family.DEAD_PART);
    assertThat(Leaning.moved(leanings, false))
        .hasSize(3)
        .first()
        .extracting(Leaning::family)
        .isEqualTo(Family.WRONG_HOLE);
    var nothing = Leaning.ofNothingWrong(now);
    assertThat(nothing.isUp()).isFalse();
    assertThat(nothing.startText()).isEqualTo("30");
    assertThat(nothing.nowText()).isEqualTo("13");
  }
}
