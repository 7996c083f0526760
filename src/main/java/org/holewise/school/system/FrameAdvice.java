package org.holewise.school.system;

import jakarta.servlet.http.HttpServletRequest;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.account.SignedIn;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.security.web.csrf.CsrfToken;
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
  private final ZoneId zone;

  FrameAdvice(School school, @Value("${holewise.version}") String version, ZoneId zone) {
    this.school = school;
    this.version = version;
    this.zone = zone;
  }

  /** In which pages show days and times. */
  @ModelAttribute("zone")
  ZoneId zone() {
    return zone;
  }

  /** A page is sent in parts, so its token is made here, before the first part has gone. */
  @ModelAttribute("frame")
  Frame frame(
      @AuthenticationPrincipal @Nullable SignedIn signedIn,
      @CookieValue(defaultValue = "auto") String theme,
      @Nullable CsrfToken token,
      HttpServletRequest request) {
    var person = Optional.ofNullable(signedIn).map(SignedIn::person);
    var role = person.map(Person::role);
    return new Frame(
        THEMES.contains(theme) ? theme : "auto",
        school.isDemo(),
        person.isPresent(),
        person.map(Person::name).orElse(""),
        role.map(Role::name).orElse(""),
        role.filter(r -> r != Role.STUDENT).isPresent(),
        role.map(r -> links(r, request.getServletPath())).orElse(List.of()),
        person.isPresent() && token != null ? token.getToken() : "",
        version);
  }

  private static List<Frame.Link> links(Role role, String address) {
    return Way.of(role).stream().map(way -> link(way, address)).toList();
  }

  private static Frame.Link link(Way way, String address) {
    String text = "way." + way.name().toLowerCase(Locale.ROOT);
    return new Frame.Link(way.path(), text, way.current(address));
  }
}
