package org.holewise.school.sheet;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Component;

/** Says how long ago something was, in the school's own time. */
@Component
public class Moments {
  private static final Duration JUST_NOW = Duration.ofMinutes(1);
  private static final Duration HOUR = Duration.ofHours(1);
  private static final DateTimeFormatter TIME = format("HH:mm");
  private static final DateTimeFormatter DAY = format("d MMM yyyy");
  private static final DateTimeFormatter EXACT = format("EEE d MMM yyyy HH:mm:ss");

  private final Clock clock;
  private final ZoneId zone;

  @Autowired
  Moments(Clock clock) {
    this(clock, clock.getZone());
  }

  Moments(Clock clock, ZoneId zone) {
    this.clock = clock;
    this.zone = zone;
  }

  private static DateTimeFormatter format(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
  }

  public Moment of(Instant at) {
    ZonedDateTime then = at.atZone(zone);
    return new Moment(
        said(at, then), EXACT.format(then), at.truncatedTo(ChronoUnit.SECONDS).toString());
  }

  /** What lies ahead by a little is now: two machines' clocks differ. */
  private Said said(Instant at, ZonedDateTime then) {
    Instant now = clock.instant();
    Duration since = Duration.between(at, now);
    long days = ChronoUnit.DAYS.between(then.toLocalDate(), now.atZone(zone).toLocalDate());
    if (since.abs().compareTo(JUST_NOW) < 0) {
      return Said.of("sheet.ago.now");
    }
    if (since.isNegative() || days > 1) {
      return Said.of("sheet.ago.date", DAY.format(then), TIME.format(then));
    }
    if (since.compareTo(HOUR) < 0) {
      return Said.of("sheet.ago.minutes", since.toMinutes());
    }
    return days == 0
        ? Said.of("sheet.ago.hours", since.toHours())
        : Said.of("sheet.ago.yesterday", TIME.format(then));
  }
}
