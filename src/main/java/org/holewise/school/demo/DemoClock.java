package org.holewise.school.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/**
 * The time of a demo: the true one, except while scenes of the past are laid. That happens before
 * anybody is let in, on one thread.
 */
@Component
@Profile("demo")
class DemoClock extends Clock {

  private final ZoneId zone;
  private volatile Duration behind = Duration.ZERO;

  DemoClock(ZoneId zone) {
    this.zone = zone;
  }

  /** Lets something have happened that long ago. */
  void ago(Duration behind, Runnable scene) {
    this.behind = behind;
    try {
      scene.run();
    } finally {
      this.behind = Duration.ZERO;
    }
  }

  @Override
  public Instant instant() {
    return Instant.now(Clock.systemUTC()).minus(behind);
  }

  @Override
  public ZoneId getZone() {
    return zone;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    throw new UnsupportedOperationException("a demo keeps one time");
  }
}
