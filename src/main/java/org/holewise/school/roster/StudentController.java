package org.holewise.school.roster;

import jakarta.validation.Valid;
import java.util.Objects;
import org.holewise.school.account.SignedIn;
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

/** A student of a class: their name and where they belong. */
@Controller
@RequestMapping("/classes/{id}/students/{student}")
class StudentController {

  private final Classes classes;
  private final Register register;
  private final ClassPage page;

  StudentController(Classes classes, Register register, ClassPage page) {
    this.classes = classes;
    this.register = register;
    this.page = page;
  }

  @GetMapping
  String show(@PathVariable long id, @PathVariable long student, Model model) {
    var group = page.group(id);
    var enrolled = page.student(group, student);
    model.addAttribute("renamed", new NewName(enrolled.student().name()));
    return show(group, enrolled, model);
  }

  @PostMapping("/name")
  String rename(
      @AuthenticationPrincipal SignedIn me,
      @PathVariable long id,
      @PathVariable long student,
      @Valid @ModelAttribute("renamed") NewName renamed,
      BindingResult found,
      Model model,
      RedirectAttributes after) {
    var group = page.group(id);
    var enrolled = page.student(group, student);
    if (found.hasErrors()) {
      return show(group, enrolled, model);
    }
    register.renameStudent(me.person(), enrolled.student(), renamed.name());
    after.addFlashAttribute("done", "student.renamed.done");
    after.addFlashAttribute("who", renamed.name());
    return "redirect:/classes/" + id;
  }

  @PostMapping("/moved")
  String move(
      @AuthenticationPrincipal SignedIn me,
      @PathVariable long id,
      @PathVariable long student,
      @RequestParam long to,
      RedirectAttributes after) {
    var group = page.group(id);
    var enrolled = page.student(group, student);
    register.moveStudent(me.person(), group, page.group(to), enrolled.student());
    after.addFlashAttribute("done", "student.moved.done");
    after.addFlashAttribute("who", enrolled.student().name());
    return "redirect:/classes/" + to;
  }

  @PostMapping("/removed")
  String remove(
      @AuthenticationPrincipal SignedIn me,
      @PathVariable long id,
      @PathVariable long student,
      RedirectAttributes after) {
    var group = page.group(id);
    var enrolled = page.student(group, student);
    register.removeStudent(me.person(), group, enrolled.student());
    after.addFlashAttribute("done", "student.removed.done");
    after.addFlashAttribute("who", enrolled.student().name());
    return "redirect:/classes/" + id;
  }

  private String show(ClassGroup group, Enrolled enrolled, Model model) {
    model.addAttribute("group", group);
    model.addAttribute("enrolled", enrolled);
    model.addAttribute(
        "others", classes.all().stream().filter(other -> !Objects.equals(other, group)).toList());
    return "roster/student";
  }
}
