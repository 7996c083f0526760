package org.holewise.school.account;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** One's own password, changed by who knows the present one. */
@Controller
@RequestMapping("/account/password")
class PasswordController {

  private static final int TRIES = 10;

  private final Staff staff;
  private final Passwords passwords;
  private final SignIns signIns;
  private final Tries tries;

  PasswordController(Staff staff, Passwords passwords, SignIns signIns, Tries tries) {
    this.staff = staff;
    this.passwords = passwords;
    this.signIns = signIns;
    this.tries = tries;
  }

  @GetMapping
  String form(@AuthenticationPrincipal SignedIn me, Model model) {
    model.addAttribute("change", new Change("", "", ""));
    return page(me, model);
  }

  @PostMapping
  String change(
      @AuthenticationPrincipal SignedIn me,
      @Valid @ModelAttribute("change") Change change,
      BindingResult found,
      HttpServletRequest request,
      Model model,
      RedirectAttributes after) {
    if (!found.hasErrors()) {
      check(me.person(), change, found);
    }
    if (found.hasErrors()) {
      return page(me, model);
    }
    staff.changePassword(me.person(), change.password());
    signIns.endOthers(me.person(), request.getSession().getId());
    request.changeSessionId();
    after.addFlashAttribute("passwordChanged", true);
    return "redirect:/account";
  }

  /** What the form holds; the new password is looked at by {@link Passwords}. */
  record Change(
      @NotNull(message = "{password.current.wrong}") String current,
      @NotNull(message = "{password.short}") String password,
      @NotNull(message = "{password.again.differs}") String again) {}

  // The present password last: to compare it is slow, and a try at it is counted.
  private void check(Person me, Change change, BindingResult found) {
    passwords
        .wrongWith(change.password(), me.name())
        .ifPresent(key -> found.rejectValue("password", key));
    if (!change.again().equals(change.password())) {
      found.rejectValue("again", "password.again.differs");
    }
    if (found.hasErrors()) {
      return;
    }
    String what = "password of person " + me.id();
    if (!tries.allow(what, TRIES)) {
      found.rejectValue("current", "signIn.tooMany");
    } else if (!staff.isPasswordOf(me, change.current())) {
      found.rejectValue("current", "password.current.wrong");
    } else {
      tries.forget(what);
    }
  }

  private String page(SignedIn me, Model model) {
    model.addAttribute("has", staff.hasPassword(me.person()));
    return "account/password";
  }
}
