package org.holewise.school.system;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.holewise.school.account.Entrance;
import org.holewise.school.account.Role;
import org.holewise.school.demo.DemoPeople;
import org.springframework.context.annotation.Profile;
import org.springframework.http.HttpStatus;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.server.ResponseStatusException;

/** The front door of a demo: a visitor is whoever they choose to be. */
@Controller
@Profile("demo")
class DemoController {

  private final DemoPeople people;
  private final Entrance entrance;

  DemoController(DemoPeople people, Entrance entrance) {
    this.people = people;
    this.entrance = entrance;
  }

  @GetMapping("/")
  String choose(Model model, CsrfToken token) {
    token.getToken();
    model.addAttribute("choices", Arrays.stream(Role.values()).map(DemoController::name).toList());
    return "system/demo";
  }

  @PostMapping("/demo/as/{name}")
  String become(
      @PathVariable String name, HttpServletRequest request, HttpServletResponse response) {
    Role role =
        List.of(Role.values()).stream()
            .filter(one -> name(one).equals(name))
            .findFirst()
            .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    entrance.letIn(people.of(role), request, response);
    return "redirect:" + Way.home(role).path();
  }

  private static String name(Role role) {
    return role.name().toLowerCase(Locale.ROOT);
  }
}
