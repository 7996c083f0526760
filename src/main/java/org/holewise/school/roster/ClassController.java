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
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** One class: its name and its new students. */
@Controller
@RequestMapping("/classes/{id}")
class ClassController {

  private final Classes classes;
  private final Register register;
  private final ClassPage page;

  ClassController(Classes classes, Register register, ClassPage page) {
    this.classes = classes;
    this.register = register;
    this.page = page;
  }

  @GetMapping
  String show(@PathVariable long id, Model model) {
    return page.show(page.group(id), model);
  }

  @PostMapping("/name")
  String rename(
      @AuthenticationPrincipal SignedIn me,
      @PathVariable long id,
      @Valid @ModelAttribute("renamed") NewName renamed,
      BindingResult found,
      Model model,
      RedirectAttributes after) {
    var group = page.group(id);
    if (!found.hasErrors()) {
      rename(me.person(), group, renamed, found);
    }
    if (found.hasErrors()) {
      return page.show(group, model);
    }
    after.addFlashAttribute("done", "class.renamed.done");
    return "redirect:/classes/" + id;
  }

  @PostMapping("/students")
  String add(
      @AuthenticationPrincipal SignedIn me,
      @PathVariable long id,
      @RequestParam(defaultValue = "") String names,
      Model model,
      RedirectAttributes after) {
    var group = page.group(id);
    var pasted = PastedNames.read(names);
    if (!pasted.problems().isEmpty()) {
      model.addAttribute("names", names);
      model.addAttribute("problems", pasted.problems());
      return page.show(group, model);
    }
    register.addStudents(me.person(), group, pasted.names());
    after.addFlashAttribute("addedStudents", pasted.names().size());
    return "redirect:/classes/" + id;
  }

  private void rename(Person teacher, ClassGroup group, NewName renamed, BindingResult found) {
    boolean taken = classes.named(renamed.name()).filter(g -> g.id() != group.id()).isPresent();
    try {
      if (taken) {
        found.rejectValue("name", "class.name.taken");
      } else {
        register.renameClass(teacher, group, renamed.name());
      }
    } catch (DuplicateKeyException meanwhile) {
      found.rejectValue("name", "class.name.taken");
    }
  }
}
