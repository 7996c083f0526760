package org.holewise.school.account;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.springframework.dao.DuplicateKeyException;
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

  private static final List<Role> STAFF =
      List.of(Role.TEACHER, Role.TECHNICIAN, Role.ADMINISTRATOR);

  private final People people;
  private final Passwords passwords;

  PeopleController(People people, Passwords passwords) {
    this.people = people;
    this.passwords = passwords;
  }

  @GetMapping
  String list(Model model) {
    return page(model.addAttribute("person", new NewPerson("", Role.TEACHER, "")));
  }

  @PostMapping
  String add(
      @Valid @ModelAttribute("person") NewPerson person,
      BindingResult found,
      Model model,
      RedirectAttributes after) {
    if (!found.hasErrors()) {
      passwords
          .wrongWith(person.password(), person.name())
          .ifPresent(key -> found.rejectValue("password", key));
    }
    if (found.hasErrors() || !STAFF.contains(person.role()) || !added(person, found)) {
      return page(model);
    }
    after.addFlashAttribute("added", person.name());
    return "redirect:/people";
  }

  /** What the form holds; the password is looked at by {@link Passwords}. */
  record NewPerson(
      @NotBlank(message = "{person.name.missing}") @Size(max = 100, message = "{person.name.long}")
          String name,
      @NotNull(message = "{person.role.missing}") Role role,
      @NotNull(message = "{password.short}") String password) {}

  private boolean added(NewPerson person, BindingResult found) {
    try {
      people.add(person.name(), person.role(), person.password());
      return true;
    } catch (DuplicateKeyException taken) {
      found.rejectValue("name", "person.name.taken");
      return false;
    }
  }

  private String page(Model model) {
    model.addAttribute("people", people.all());
    model.addAttribute("roles", STAFF);
    return "account/people";
  }
}
