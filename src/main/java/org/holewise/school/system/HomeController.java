package org.holewise.school.system;

import org.holewise.school.account.Role;
import org.holewise.school.account.SignedIn;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** Sends whoever comes to the front door to where their work is. */
@Controller
class HomeController {

  private final School school;
  private final SetUp setUp;

  HomeController(School school, SetUp setUp) {
    this.school = school;
    this.setUp = setUp;
  }

  @GetMapping("/")
  String home(@AuthenticationPrincipal @Nullable SignedIn signedIn) {
    if (school.isDemo()) {
      return "redirect:/try";
    }
    if (setUp.isOpen()) {
      return "redirect:/setup";
    }
    if (signedIn == null) {
      return "redirect:/sign-in";
    }
    Role role = signedIn.person().role();
    return role.teaches() ? "redirect:/try" : "system/home";
  }
}
