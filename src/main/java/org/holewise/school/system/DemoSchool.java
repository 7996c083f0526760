package org.holewise.school.system;

import org.holewise.school.account.ApiTokens;
import org.holewise.school.account.People;
import org.holewise.school.account.Role;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** A demo has one teacher, who cannot sign in, and a token that lasts until the next start. */
@Component
@Profile("demo")
class DemoSchool {

  private static final Logger log = LoggerFactory.getLogger(DemoSchool.class);

  private static final String TEACHER = "Demo teacher";

  private final People people;
  private final ApiTokens tokens;

  DemoSchool(People people, ApiTokens tokens) {
    this.people = people;
    this.tokens = tokens;
  }

  @EventListener(ApplicationReadyEvent.class)
  void showToken() {
    var teacher =
        people.named(TEACHER).orElseGet(() -> people.addWithoutPassword(TEACHER, Role.TEACHER));
    tokens.revokeAll(teacher);
    log.info("demo API token: {}", tokens.make(teacher, "demo"));
  }
}
