package org.holewise.school.roster;

import org.holewise.school.account.SignedIn;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Puts a student who is in no class into one. */
@Controller
class PlacesController {

  private final Classes classes;
  private final Register register;
  private final ClassPage page;

  PlacesController(Classes classes, Register register, ClassPage page) {
    this.classes = classes;
    this.register = register;
    this.page = page;
  }

  @PostMapping("/classes/students/{student}/placed")
  String place(
      @AuthenticationPrincipal SignedIn me,
      @PathVariable long student,
      @RequestParam long to,
      RedirectAttributes after) {
    var group = page.group(to);
    var person =
        classes
            .student(student)
            .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    // A page that was loaded a while ago: a colleague was quicker.
    var already = classes.of(person).stream().findFirst();
    after.addFlashAttribute("who", person.name());
    if (already.isPresent()) {
      after.addFlashAttribute("already", "student.placed.already");
    } else {
      register.placeStudent(me.person(), group, person);
      after.addFlashAttribute("done", "student.moved.done");
    }
    return "redirect:/classes/" + already.orElse(group).id();
  }
}
