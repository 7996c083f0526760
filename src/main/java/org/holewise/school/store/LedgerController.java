package org.holewise.school.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.holewise.school.account.SignedIn;
import org.holewise.school.sheet.Moment;
import org.holewise.school.sheet.Moments;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** An item's ledger: what came, went, broke, was counted; and how a mistake is put right. */
@Controller
@RequestMapping("/store/items/{id}")
class LedgerController {

  private static final int ROWS = 50;
  private static final String NOTE = "-note";

  private final Items items;
  private final Movements movements;
  private final Ledger ledger;
  private final Texts texts;
  private final Moments moments;

  LedgerController(Items items, Movements movements, Ledger ledger, Texts texts, Moments moments) {
    this.items = items;
    this.movements = movements;
    this.ledger = ledger;
    this.texts = texts;
    this.moments = moments;
  }

  @GetMapping
  String show(
      @PathVariable long id,
      @RequestParam(defaultValue = "" + (Long.MAX_VALUE - 1)) long before,
      Model model) {
    return page(level(id), before, Typed.nothing(texts), model);
  }

  @PostMapping("/delivered")
  String deliver(
      @PathVariable long id,
      @RequestParam Map<String, String> entries,
      @AuthenticationPrincipal SignedIn who,
      Model model,
      RedirectAttributes after) {
    var form = form(id, "delivered", entries);
    return answer(form, move(form, Act.DELIVERED, who), model, after);
  }

  @PostMapping("/broken")
  String takeOut(
      @PathVariable long id,
      @RequestParam Map<String, String> entries,
      @AuthenticationPrincipal SignedIn who,
      Model model,
      RedirectAttributes after) {
    var form = form(id, "broken", entries);
    return answer(form, move(form, Act.BROKEN_IN_STORE, who), model, after);
  }

  @PostMapping("/counted")
  String count(
      @PathVariable long id,
      @RequestParam Map<String, String> entries,
      @AuthenticationPrincipal SignedIn who,
      Model model,
      RedirectAttributes after) {
    var form = form(id, "counted", entries);
    Typed typed = form.typed();
    int there = typed.wanted(form.field(), 0);
    int shown = typed.wanted("shown", 0);
    String note = typed.note(form.field() + NOTE);
    return answer(
        form, () -> ledger.count(who.person(), typed.key(), id, shown, there, note), model, after);
  }

  @PostMapping("/movements/{movement}/put-right")
  String putRight(
      @PathVariable long id,
      @PathVariable long movement,
      @AuthenticationPrincipal SignedIn who,
      Model model,
      RedirectAttributes after) {
    var form = new Form(level(id).item(), "ledger", Typed.nothing(texts));
    var wrong =
        movements
            .find(form.item(), movement)
            .filter(row -> !row.counter())
            .orElseThrow(LedgerController::notFound);
    return answer(form, () -> ledger.putRight(who.person(), form.item(), wrong, ""), model, after);
  }

  /** What was sent about an item; {@code field}: what a refusal is said at. */
  private record Form(Item item, String field, Typed typed) {}

  private Form form(long id, String field, Map<String, String> entries) {
    return new Form(level(id).item(), field, new Typed(entries, texts));
  }

  /** Moves as many as the field says. */
  private Supplier<Outcome> move(Form form, Act act, SignedIn who) {
    int quantity = form.typed().wanted(form.field(), 1);
    String note = form.typed().note(form.field() + NOTE);
    return () -> {
      var line = Slip.Line.of(form.item().id(), act, quantity);
      var slip = new Slip(form.typed().key(), Optional.empty(), note, List.of(line));
      return ledger.write(who.person(), slip);
    };
  }

  /** Does it where what was typed is sound; back to the item, or the form again. */
  private String answer(Form form, Supplier<Outcome> act, Model model, RedirectAttributes after) {
    if (form.typed().isSound()) {
      told(act.get(), form.field(), form.typed(), after);
    }
    return form.typed().isSound()
        ? "redirect:/store/items/" + form.item().id()
        : page(level(form.item().id()), Long.MAX_VALUE - 1, form.typed(), model);
  }

  private void told(Outcome outcome, String field, Typed typed, RedirectAttributes after) {
    if (outcome instanceof Outcome.TooFew few) {
      few.shortages().forEach(shortage -> typed.refuse(field, shortage));
    } else if (outcome instanceof Outcome.Moved moved) {
      typed.refuse(field, "store.count.moved", moved.inStore());
    } else if (outcome instanceof Outcome.Already) {
      after.addFlashAttribute("already", texts.say("store.already"));
    } else {
      String key = outcome instanceof Outcome.Agrees ? "store.count.agrees" : "store.done." + field;
      after.addFlashAttribute("done", texts.say(key));
    }
  }

  /** A row with the time that the page shows. */
  record Noted(Movement row, Moment at) {}

  private String page(Level level, long before, Typed typed, Model model) {
    var rows = movements.of(level.item(), before, ROWS + 1);
    model.addAttribute("level", level);
    model.addAttribute("rows", rows.stream().limit(ROWS).map(this::noted).toList());
    model.addAttribute("older", rows.size() > ROWS ? rows.get(ROWS - 1).id() : null);
    model.addAttribute("typed", typed);
    model.addAttribute("keys", List.of(newKey(), newKey(), newKey()));
    return "store/item";
  }

  private Noted noted(Movement row) {
    return new Noted(row, moments.of(row.at()));
  }

  private static String newKey() {
    return UUID.randomUUID().toString();
  }

  private Level level(long id) {
    return items.find(id).orElseThrow(LedgerController::notFound);
  }

  private static ResponseStatusException notFound() {
    return new ResponseStatusException(HttpStatus.NOT_FOUND);
  }
}
