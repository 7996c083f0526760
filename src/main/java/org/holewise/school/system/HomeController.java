package org.holewise.school.system;

import org.holewise.school.account.SignedIn;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The front door of a school: to where one's work is, or to the two ways in. */
@Controller
@Profile("!demo")
class HomeController {

  private final SetUp setUp;

  HomeController(SetUp setUp) {
    this.setUp = setUp;
  }

  @GetMapping("/")
  String home(
      @AuthenticationPrincipal @Nullable SignedIn signedIn,
      @RequestParam(required = false) @Nullable String out,
      Model model) {
    if (signedIn != null) {
      return "redirect:" + Way.home(signedIn.person().role()).path();
    }
    if (setUp.isOpen()) {
      return "redirect:/setup";
    }
    model.addAttribute("out", out != null);
    return "system/home";
  }
}
