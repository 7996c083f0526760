package org.holewise.school.store;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.holewise.engine.exercise.Exercise;
import org.holewise.school.account.SignedIn;
import org.holewise.school.library.Library;
import org.holewise.school.library.LibraryExercise;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.http.HttpStatus;
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
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The store's list: an item is added, and said anew. */
@Controller
@RequestMapping("/store/items")
class ItemsController {

  private static final String FORM = "item";

  private final Items items;
  private final Library library;
  private final Texts texts;

  ItemsController(Items items, Library library, Texts texts) {
    this.items = items;
    this.library = library;
    this.texts = texts;
  }

  @GetMapping("/new")
  String blank(@RequestParam(defaultValue = "") String part, Model model) {
    var key = PartKey.read(part);
    String label = key.map(texts::part).orElse("");
    String text = key.map(PartKey::text).orElse(part);
    return adding(model.addAttribute(FORM, new ItemForm(label, text, "", "0", "1")));
  }

  @PostMapping
  String add(
      @ModelAttribute(FORM) ItemForm form,
      BindingResult found,
      @AuthenticationPrincipal SignedIn who,
      Model model,
      RedirectAttributes after) {
    var item = form.read(0, found);
    if (item.isPresent()) {
      try {
        var added = items.add(who.person(), item.get());
        after.addFlashAttribute("done", texts.say("store.item.added", added.label()));
        return "redirect:/store/items/" + added.id();
      } catch (DuplicateKeyException taken) {
        refuse(item.get(), found);
      }
    }
    return adding(model);
  }

  @GetMapping("/{id}/edit")
  String edit(@PathVariable long id, Model model) {
    var item = item(id);
    return editing(model.addAttribute(FORM, ItemForm.of(item)), item);
  }

  @PostMapping("/{id}")
  String change(
      @PathVariable long id,
      @ModelAttribute(FORM) ItemForm form,
      BindingResult found,
      @AuthenticationPrincipal SignedIn who,
      Model model,
      RedirectAttributes after) {
    var before = item(id);
    var item = form.read(id, found);
    if (item.isPresent()) {
      try {
        items.change(who.person(), item.get());
        after.addFlashAttribute("done", texts.say("store.item.changed", item.get().label()));
        return "redirect:/store/items/" + id;
      } catch (DuplicateKeyException taken) {
        refuse(item.get(), found);
      }
    }
    return editing(model, before);
  }

  // Either the label or the part is another item's.
  private void refuse(Item item, BindingResult found) {
    var same = item.part().flatMap(items::being).map(Level::item);
    same.filter(other -> other.id() != item.id())
        .ifPresentOrElse(
            other ->
                found.rejectValue(
                    "part", "store.item.part.taken", new Object[] {other.label()}, ""),
            () -> found.rejectValue("label", "store.item.label.taken"));
  }

  private String adding(Model model) {
    return form(model.addAttribute("action", "/store/items").addAttribute("adding", true));
  }

  private String editing(Model model, Item item) {
    return form(
        model.addAttribute("action", "/store/items/" + item.id()).addAttribute("adding", false));
  }

  private String form(Model model) {
    model.addAttribute("parts", unlisted());
    return "store/item-form";
  }

  /** The parts of the library's exercises that are no item yet. */
  private List<String> unlisted() {
    Set<PartKey> listed =
        items.all().stream()
            .flatMap(level -> level.item().part().stream())
            .collect(Collectors.toSet());
    return library.exercises().stream()
        .map(LibraryExercise::exercise)
        .flatMap(ItemsController::parts)
        .filter(part -> !listed.contains(part))
        .map(PartKey::text)
        .distinct()
        .sorted()
        .toList();
  }

  private static Stream<PartKey> parts(Exercise exercise) {
    var equipment = Stream.of(PartKey.board(exercise), PartKey.meter(exercise));
    return Stream.concat(exercise.parts().stream().map(PartKey::of), equipment);
  }

  private Item item(long id) {
    return items
        .find(id)
        .map(Level::item)
        .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
  }
}
