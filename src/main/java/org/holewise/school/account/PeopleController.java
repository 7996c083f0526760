package org.holewise.school.account;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The staff: an administrator adds a person and hands them their first password. */
@Controller
@RequestMapping("/people")
class PeopleController {

  private static final List<Role> ROLES =
      List.of(Role.TEACHER, Role.TECHNICIAN, Role.ADMINISTRATOR);

  private final Staff staff;
  private final Passwords passwords;

  PeopleController(Staff staff, Passwords passwords) {
    this.staff = staff;
    this.passwords = passwords;
  }

  @GetMapping
  String list(Model model) {
    return page(model.addAttribute("person", new NewPerson("", Role.TEACHER, "")));
  }

  @PostMapping
  String add(
      @AuthenticationPrincipal SignedIn me,
      @Valid @ModelAttribute("person") NewPerson person,
      BindingResult found,
      Model model,
      RedirectAttributes after) {
    check(person, found);
    if (found.hasErrors() || !added(me.person(), person, found)) {
      return page(model);
    }
    after.addFlashAttribute("added", person.name());
    return "redirect:/people";
  }

  /** What the form holds; the password is looked at by {@link Passwords}. */
  record NewPerson(
      @NotBlank(message = "{person.name.missing}")
          @Size(max = TypedName.LONGEST, message = "{person.name.long}")
          String name,
      @NotNull(message = "{person.role.missing}") Role role,
      @NotNull(message = "{password.short}") String password) {

    NewPerson(@Nullable String name, Role role, String password) {
      this.name = TypedName.tidy(name);
      this.role = role;
      this.password = password;
    }
  }

  private void check(NewPerson person, BindingResult found) {
    if (!found.hasErrors() && !ROLES.contains(person.role())) {
      found.rejectValue("role", "person.role.missing");
    }
    if (!found.hasErrors()) {
      passwords
          .wrongWith(person.password(), person.name())
          .ifPresent(key -> found.rejectValue("password", key));
    }
  }

  private boolean added(Person actor, NewPerson person, BindingResult found) {
    try {
      staff.add(actor, person.name(), person.role(), person.password());
      return true;
    } catch (DuplicateKeyException taken) {
      found.rejectValue("name", "person.name.taken");
      return false;
    }
  }

  private String page(Model model) {
    var all = staff.all();
    model.addAttribute("staff", all.stream().filter(one -> one.left().isEmpty()).toList());
    model.addAttribute("gone", all.stream().filter(one -> one.left().isPresent()).toList());
    model.addAttribute("roles", ROLES);
    return "account/people";
  }
}
