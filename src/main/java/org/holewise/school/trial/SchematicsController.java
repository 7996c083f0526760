package org.holewise.school.trial;

import org.holewise.school.library.Library;
import org.holewise.school.library.LibraryExercise;
import org.holewise.school.sheet.Schematics;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** The schematics of all exercises of the library, to look through. */
@Controller
@RequestMapping("/schematics")
class SchematicsController {

  private final Library library;
  private final Schematics schematics;

  SchematicsController(Library library, Schematics schematics) {
    this.library = library;
    this.schematics = schematics;
  }

  @GetMapping
  String all(Model model) {
    var exercises = library.exercises().stream().map(LibraryExercise::exercise);
    model.addAttribute("schematics", exercises.map(schematics::of).toList());
    return "trial/schematics";
  }
}
