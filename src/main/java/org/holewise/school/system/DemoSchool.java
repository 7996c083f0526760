package org.holewise.school.system;

import org.holewise.school.account.ApiTokens;
import org.holewise.school.account.Role;
import org.holewise.school.demo.DemoPeople;
import org.holewise.school.demo.DemoScenes;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * A demo has people who cannot sign in, a class at work, and a token that lasts until the next
 * start. All is there before the first visitor is let in.
 */
@Component
@Profile("demo")
class DemoSchool implements SmartInitializingSingleton {

  private static final Logger log = LoggerFactory.getLogger(DemoSchool.class);

  private final DemoPeople people;
  private final DemoScenes scenes;
  private final ApiTokens tokens;

  DemoSchool(DemoPeople people, DemoScenes scenes, ApiTokens tokens) {
    this.people = people;
    this.scenes = scenes;
    this.tokens = tokens;
  }

  @Override
  public void afterSingletonsInstantiated() {
    scenes.lay();
  }

  @EventListener(ApplicationReadyEvent.class)
  void showToken() {
    var teacher = people.of(Role.TEACHER);
    tokens.revokeAll(teacher);
    log.info("demo API token: {}", tokens.make(teacher, "demo"));
  }
}
