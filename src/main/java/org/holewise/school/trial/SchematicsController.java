package org.holewise.school.trial;

import java.util.Comparator;
import org.holewise.school.library.Library;
import org.holewise.school.library.LibraryExercise;
import org.holewise.school.sheet.SchematicSheet;
import org.holewise.school.sheet.Schematics;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** The schematics of all exercises of the library, the largest last, to look through. */
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
    var sheets = library.exercises().stream().map(LibraryExercise::exercise).map(schematics::of);
    model.addAttribute(
        "schematics", sheets.sorted(Comparator.comparing(SchematicsController::isLarge)).toList());
    return "trial/schematics";
  }

  private static boolean isLarge(SchematicSheet sheet) {
    return sheet.picture().filter(picture -> picture.size().equals("large")).isPresent();
  }
}
