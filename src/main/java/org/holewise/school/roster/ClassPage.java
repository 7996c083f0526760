package org.holewise.school.roster;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** The page of one class, which answers several forms. */
@Component
class ClassPage {

  private final Classes classes;

  ClassPage(Classes classes) {
    this.classes = classes;
  }

  ClassGroup group(long id) {
    return classes.find(id).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
  }

  Enrolled student(ClassGroup group, long student) {
    return classes
        .enrolled(group, student)
        .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
  }

  /** Where students type the code of their card, as this request was addressed. */
  static String cardAddress() {
    return ServletUriComponentsBuilder.fromCurrentContextPath().path("/card").toUriString();
  }

  /** Completes what the model has of the page's forms, and names the template. */
  String show(ClassGroup group, Model model) {
    var roll = classes.roll(group);
    model.addAttribute("group", group);
    model.addAttribute("roll", roll);
    model.addAttribute("shared", shared(roll));
    model.addAttribute("cardAddress", cardAddress());
    model.addAttribute("most", PastedNames.MOST);
    offer(model, "renamed", new NewName(group.name()));
    offer(model, "names", "");
    offer(model, "problems", List.of());
    return "roster/class";
  }

  private static void offer(Model model, String name, Object fresh) {
    if (!model.containsAttribute(name)) {
      model.addAttribute(name, fresh);
    }
  }

  /** Names that several students of the class have. */
  private static List<String> shared(List<Enrolled> roll) {
    var first = new TreeMap<String, String>();
    roll.forEach(one -> first.putIfAbsent(folded(one), one.student().name()));
    return roll.stream()
        .collect(groupingBy(ClassPage::folded, TreeMap::new, counting()))
        .entrySet()
        .stream()
        .filter(entry -> entry.getValue() > 1)
        .map(entry -> first.getOrDefault(entry.getKey(), ""))
        .toList();
  }

  private static String folded(Enrolled one) {
    return one.student().name().toLowerCase(Locale.ROOT);
  }
}
