package org.holewise.school.roster;

import jakarta.validation.Valid;
import org.holewise.school.account.Person;
import org.holewise.school.account.SignedIn;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** All classes, and a new one. */
@Controller
@RequestMapping("/classes")
class ClassesController {

  private final Classes classes;
  private final Register register;

  ClassesController(Classes classes, Register register) {
    this.classes = classes;
    this.register = register;
  }

  @GetMapping
  String list(Model model) {
    model.addAttribute("added", new NewName(""));
    return page(model);
  }

  @PostMapping
  String add(
      @AuthenticationPrincipal SignedIn me,
      @Valid @ModelAttribute("added") NewName added,
      BindingResult found,
      Model model) {
    if (!found.hasErrors() && classes.named(added.name()).isPresent()) {
      found.rejectValue("name", "class.name.taken");
    }
    return found.hasErrors() ? page(model) : made(me.person(), added, found, model);
  }

  private String made(Person teacher, NewName added, BindingResult found, Model model) {
    try {
      return "redirect:/classes/" + register.addClass(teacher, added.name()).id();
    } catch (DuplicateKeyException taken) {
      found.rejectValue("name", "class.name.taken");
      return page(model);
    }
  }

  private String page(Model model) {
    model.addAttribute("classes", classes.sizes());
    model.addAttribute("without", classes.withoutClass());
    return "roster/classes";
  }
}
