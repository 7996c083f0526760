package org.holewise.school.roster;

import java.util.List;
import java.util.Optional;
import org.holewise.school.account.Person;
import org.holewise.school.account.SignedIn;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** New cards for students of a class, on the sheet that answers and nowhere else. */
@Controller
class CardsController {

  private final Classes classes;
  private final Register register;
  private final ClassPage page;

  CardsController(Classes classes, Register register, ClassPage page) {
    this.classes = classes;
    this.register = register;
    this.page = page;
  }

  /** For whom: all of the class, those without a card, or those whose box is ticked. */
  @PostMapping("/classes/{id}/cards")
  String make(
      @AuthenticationPrincipal SignedIn me,
      @PathVariable long id,
      @RequestParam(name = "for", defaultValue = "chosen") String whom,
      @RequestParam(name = "student") Optional<List<Long>> ticked,
      Model model) {
    var group = page.group(id);
    var students = students(group, whom, ticked.orElse(List.of()));
    if (students.isEmpty()) {
      model.addAttribute("nobody", whom.equals("chosen") ? "cards.nobody" : "cards.nobody.without");
      return page.show(group, model);
    }
    String address = ClassPage.cardAddress();
    model.addAttribute("group", group);
    model.addAttribute("cardAddress", address);
    model.addAttribute(
        "cards",
        register.makeCards(me.person(), students).stream()
            .map(card -> PrintedCard.of(card, address))
            .toList());
    return "roster/cards";
  }

  private List<Person> students(ClassGroup group, String whom, List<Long> ticked) {
    return classes.roll(group).stream()
        .filter(
            one ->
                switch (whom) {
                  case "all" -> true;
                  case "without" -> one.card().isEmpty();
                  default -> ticked.contains(one.student().id());
                })
        .map(Enrolled::student)
        .toList();
  }
}
