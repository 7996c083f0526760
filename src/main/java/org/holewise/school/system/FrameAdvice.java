package org.holewise.school.system;

import java.util.Optional;
import java.util.Set;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.account.SignedIn;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Gives every page its frame. */
@ControllerAdvice(annotations = Controller.class)
class FrameAdvice {

  private static final Set<String> THEMES = Set.of("auto", "light", "dark");

  private final School school;
  private final String version;

  FrameAdvice(School school, @Value("${holewise.version}") String version) {
    this.school = school;
    this.version = version;
  }

  @ModelAttribute("frame")
  Frame frame(
      @AuthenticationPrincipal @Nullable SignedIn signedIn,
      @CookieValue(defaultValue = "auto") String theme) {
    var person = Optional.ofNullable(signedIn).map(SignedIn::person);
    return new Frame(
        THEMES.contains(theme) ? theme : "auto",
        school.isDemo(),
        person.isPresent(),
        person.map(Person::name).orElse(""),
        person.map(Person::role).filter(Role::teaches).isPresent(),
        person.map(Person::role).filter(Role.ADMINISTRATOR::equals).isPresent(),
        version);
  }
}
