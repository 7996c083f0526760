package org.holewise.school.roster;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.holewise.school.account.ClassHours;
import org.holewise.school.account.Entrance;
import org.holewise.school.account.Person;
import org.holewise.school.account.Tries;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * The students' way in: the code on a card, while their class is at work. A code is random enough
 * to need no slow hash, and a right one writes no try: a whole year group comes in at one bell.
 */
@Controller
@RequestMapping("/card")
class CardDoor {

  private static final String PAGE = "roster/card";

  /** Wrong codes from one address in a quarter of an hour; a school is often one address. */
  static final int WRONG_BY_ADDRESS = 600;

  private final Cards cards;
  private final ClassHours hours;
  private final Tries tries;
  private final Entrance entrance;

  CardDoor(Cards cards, ClassHours hours, Tries tries, Entrance entrance) {
    this.cards = cards;
    this.hours = hours;
    this.tries = tries;
    this.entrance = entrance;
  }

  @GetMapping
  String form() {
    return PAGE;
  }

  @PostMapping
  String comeIn(
      @RequestParam(defaultValue = "") String code,
      Model model,
      HttpServletRequest request,
      HttpServletResponse response) {
    String address = "card from " + request.getRemoteAddr();
    var holder = tries.areSpent(address, WRONG_BY_ADDRESS) ? nobody() : cards.holder(code);
    if (holder.filter(hours::areOnFor).isPresent()) {
      entrance.letIn(holder.get(), request, response);
      return "redirect:/today";
    }
    model.addAttribute("code", code);
    model.addAttribute("reason", reason(code, holder, address));
    return PAGE;
  }

  private String reason(String code, Optional<Person> holder, String address) {
    if (holder.isPresent()) {
      return "card.notNow";
    }
    if (code.isBlank()) {
      return "card.missing";
    }
    if (tries.areSpent(address, WRONG_BY_ADDRESS)) {
      return "card.tooMany";
    }
    tries.count(address);
    return "card.unknown";
  }

  private static Optional<Person> nobody() {
    return Optional.empty();
  }
}
