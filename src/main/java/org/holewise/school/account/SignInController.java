package org.holewise.school.account;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;

@Controller
class SignInController {

  @GetMapping(SignInDoor.PAGE)
  String form() {
    return "account/sign-in";
  }

  @GetMapping(path = SignInDoor.PAGE, params = "ready")
  String afterSetUp(Model model) {
    model.addAttribute("done", "signIn.ready");
    return form();
  }

  /** Where a refused try is shown: what was typed as name stays, the password does not. */
  @PostMapping(SignInDoor.REFUSED)
  String refused(
      @RequestParam(defaultValue = "") String name,
      @RequestAttribute(name = SignInDoor.REASON, required = false) @Nullable String reason,
      Model model) {
    model.addAttribute("name", name);
    model.addAttribute("reason", reason == null ? "signIn.refused" : reason);
    return "account/sign-in";
  }
}
