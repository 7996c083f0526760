package org.holewise.school.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import org.holewise.store.HandClock;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class MomentsTest {
  private final HandClock clock = new HandClock();
  private final Moments moments = new Moments(clock, ZoneId.of("Europe/Vienna"));

  @ParameterizedTest
  @CsvSource({
    "PT0S, just now",
    "PT59S, just now",
    "PT60S, 1 min ago",
    "PT3M20S, 3 min ago",
    "PT59M59S, 59 min ago",
    "PT1H, 1 h ago",
    "PT9H59M, 9 h ago",
    "PT10H1M, yesterday 23:59",
    "PT34H, yesterday 00:00",
    "PT34H1M, '2 Mar 2031, 23:59'",
    "PT-30S, just now",
    "PT-2H, '4 Mar 2031, 12:00'"
  })
  void isSaidAsPeopleSayIt(Duration since, String said) {
    Moment moment = moments.of(clock.instant().minus(since));
    assertThat(Rendered.words("fragments/time", "ago", Map.of("moment", moment))).isEqualTo(said);
  }

  @Test
  void theExactTimeStandsBeside() {
    Moment moment = moments.of(Instant.parse("2031-03-01T13:05:09.123Z"));
    assertThat(moment.exact()).isEqualTo("Sat 1 Mar 2031 14:05:09");
    assertThat(moment.iso()).isEqualTo("2031-03-01T13:05:09Z");
    assertThat(Rendered.html("fragments/time", "ago", Map.of("moment", moment)))
        .contains("datetime=\"2031-03-01T13:05:09Z\"", "title=\"Sat 1 Mar 2031 14:05:09\"");
  }

  @Test
  void aMinuteBeforeMidnightIsStillMinutesAgo() {
    clock.forward(Duration.ofHours(14).plusMinutes(10));
    assertThat(moments.of(clock.instant().minus(Duration.ofMinutes(20))).said().key())
        .isEqualTo("sheet.ago.minutes");
  }
}
