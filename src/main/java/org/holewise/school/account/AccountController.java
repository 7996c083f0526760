package org.holewise.school.account;

import org.springframework.http.HttpStatus;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** One's own account; who teaches has tokens there, by which programs act for them. */
@Controller
@RequestMapping("/account")
class AccountController {

  private static final int LONGEST_LABEL = 100;

  private final ApiTokens tokens;

  AccountController(ApiTokens tokens) {
    this.tokens = tokens;
  }

  @GetMapping
  String show(@AuthenticationPrincipal SignedIn me, Model model) {
    model.addAttribute("teaches", me.person().role().teaches());
    model.addAttribute("tokens", tokens.of(me.person()));
    return "account/account";
  }

  /** The new token is on the page that answers, and nowhere else: no redirect would carry it. */
  @PostMapping("/tokens")
  String make(
      @AuthenticationPrincipal SignedIn me,
      @RequestParam(defaultValue = "") String label,
      Model model) {
    String tidy = TypedName.tidy(label);
    if (tidy.isEmpty() || tidy.length() > LONGEST_LABEL) {
      model.addAttribute("label", label);
      model.addAttribute("wrong", tidy.isEmpty() ? "token.label.missing" : "token.label.long");
    } else {
      model.addAttribute("made", tokens.make(me.person(), tidy));
    }
    return show(me, model);
  }

  @PostMapping("/tokens/{id}/revoked")
  String revoke(
      @AuthenticationPrincipal SignedIn me, @PathVariable long id, RedirectAttributes after) {
    if (!tokens.revoke(me.person(), id)) {
      throw new ResponseStatusException(HttpStatus.NOT_FOUND);
    }
    after.addFlashAttribute("revoked", true);
    return "redirect:/account";
  }
}
