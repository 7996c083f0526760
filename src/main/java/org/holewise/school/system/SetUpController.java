package org.holewise.school.system;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.holewise.school.account.Passwords;
import org.holewise.school.account.Tries;
import org.springframework.context.annotation.Profile;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.server.ResponseStatusException;

/** The page that makes the first administrator; gone once there is one. */
@Controller
@Profile("!demo")
@RequestMapping("/setup")
class SetUpController {

  private static final int TRIES_BY_ADDRESS = 10;

  private final SetUp setUp;
  private final Passwords passwords;
  private final Tries tries;

  SetUpController(SetUp setUp, Passwords passwords, Tries tries) {
    this.setUp = setUp;
    this.passwords = passwords;
    this.tries = tries;
  }

  @GetMapping
  String form(Model model) {
    mustBeOpen();
    model.addAttribute("first", new FirstAdministrator("", "", ""));
    return "system/setup";
  }

  @PostMapping
  String complete(
      @Valid @ModelAttribute("first") FirstAdministrator first,
      BindingResult found,
      HttpServletRequest request) {
    mustBeOpen();
    if (!found.hasErrors()) {
      passwords
          .wrongWith(first.password(), first.name())
          .ifPresent(key -> found.rejectValue("password", key));
    }
    if (!found.hasErrors()) {
      redeem(first, found, request.getRemoteAddr());
    }
    return found.hasErrors() ? "system/setup" : "redirect:/sign-in?ready";
  }

  private void redeem(FirstAdministrator first, BindingResult found, String address) {
    if (!tries.allow("set-up from " + address, TRIES_BY_ADDRESS)) {
      found.rejectValue("code", "setUp.tooMany");
    } else if (!setUp.complete(first.code(), first.name(), first.password())) {
      found.rejectValue("code", "setUp.code.wrong");
    }
  }

  /** What the form holds. */
  record FirstAdministrator(
      @NotBlank(message = "{setUp.code.missing}") @Size(max = 200, message = "{setUp.code.wrong}")
          String code,
      @NotBlank(message = "{person.name.missing}") @Size(max = 100, message = "{person.name.long}")
          String name,
      @NotNull(message = "{password.short}") String password) {}

  private void mustBeOpen() {
    if (!setUp.isOpen()) {
      throw new ResponseStatusException(HttpStatus.NOT_FOUND);
    }
  }
}
