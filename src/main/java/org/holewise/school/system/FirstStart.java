package org.holewise.school.system;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Shows the set-up code to whoever can read the log, as long as the school has nobody. */
@Component
@Profile("!demo")
class FirstStart {

  private static final Logger log = LoggerFactory.getLogger(FirstStart.class);

  private final SetUp setUp;

  FirstStart(SetUp setUp) {
    this.setUp = setUp;
  }

  @EventListener(ApplicationReadyEvent.class)
  void showCode() {
    if (setUp.isOpen()) {
      log.info("set-up code: {} (works once, on the page /setup)", setUp.newCode());
    }
  }
}
