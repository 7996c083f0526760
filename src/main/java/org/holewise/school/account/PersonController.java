package org.holewise.school.account;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** One of the staff: a new first password, and the account taken away or given back. */
@Controller
@RequestMapping("/people/{id}")
class PersonController {

  private final Staff staff;
  private final Passwords passwords;
  private final SignIns signIns;

  PersonController(Staff staff, Passwords passwords, SignIns signIns) {
    this.staff = staff;
    this.passwords = passwords;
    this.signIns = signIns;
  }

  @GetMapping
  String show(@PathVariable long id, Model model) {
    model.addAttribute("first", new FirstPassword(""));
    return page(member(id), model);
  }

  @PostMapping("/password")
  String admit(
      @AuthenticationPrincipal SignedIn me,
      @PathVariable long id,
      @Valid @ModelAttribute("first") FirstPassword first,
      BindingResult found,
      Model model,
      RedirectAttributes after) {
    var member = member(id);
    if (!found.hasErrors()) {
      passwords
          .wrongWith(first.password(), member.person().name())
          .ifPresent(key -> found.rejectValue("password", key));
    }
    if (found.hasErrors()) {
      return page(member, model);
    }
    staff.admit(me.person(), member, first.password());
    signIns.end(member.person());
    after.addFlashAttribute("admitted", member.person().name());
    return "redirect:/people";
  }

  @PostMapping("/left")
  String dismiss(
      @AuthenticationPrincipal SignedIn me,
      @PathVariable long id,
      Model model,
      RedirectAttributes after) {
    var member = member(id);
    if (!staff.dismiss(me.person(), member)) {
      model.addAttribute("last", true);
      return show(id, model);
    }
    signIns.end(member.person());
    after.addFlashAttribute("dismissed", member.person().name());
    return "redirect:/people";
  }

  /** What the form holds; the password is looked at by {@link Passwords}. */
  record FirstPassword(@NotNull(message = "{password.short}") String password) {}

  private StaffMember member(long id) {
    return staff.find(id).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
  }

  private static String page(StaffMember member, Model model) {
    model.addAttribute("member", member);
    return "account/person";
  }
}
