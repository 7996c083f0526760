package org.holewise.school.store;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.holewise.school.account.SignedIn;
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
  private static final String COUNTED = "counted";
  private static final String NOTE = "-note";

  private final Items items;
  private final Movements movements;
  private final Ledger ledger;
  private final Texts texts;

  LedgerController(Items items, Movements movements, Ledger ledger, Texts texts) {
    this.items = items;
    this.movements = movements;
    this.ledger = ledger;
    this.texts = texts;
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
    Item item = level(id).item();
    var typed = new Typed(entries, texts);
    move(item, Act.DELIVERED, "delivered", typed, who)
        .ifPresent(outcome -> told(outcome, "delivered", typed, after));
    return typed.isSound() ? back(item) : again(item, typed, model);
  }

  @PostMapping("/broken")
  String takeOut(
      @PathVariable long id,
      @RequestParam Map<String, String> entries,
      @AuthenticationPrincipal SignedIn who,
      Model model,
      RedirectAttributes after) {
    Item item = level(id).item();
    var typed = new Typed(entries, texts);
    move(item, Act.BROKEN_IN_STORE, "broken", typed, who)
        .ifPresent(outcome -> told(outcome, "broken", typed, after));
    return typed.isSound() ? back(item) : again(item, typed, model);
  }

  /** Moves what the field says, or nothing where something is wrong with what was typed. */
  private Optional<Outcome> move(Item item, Act act, String field, Typed typed, SignedIn who) {
    int quantity = typed.wanted(field, 1);
    String note = typed.note(field + NOTE);
    if (!typed.isSound()) {
      return Optional.empty();
    }
    var line = Slip.Line.of(item.id(), act, quantity);
    var slip = new Slip(typed.key(), Optional.empty(), note, List.of(line));
    return Optional.of(ledger.write(who.person(), slip));
  }

  @PostMapping("/counted")
  String count(
      @PathVariable long id,
      @RequestParam Map<String, String> entries,
      @AuthenticationPrincipal SignedIn who,
      Model model,
      RedirectAttributes after) {
    Item item = level(id).item();
    var typed = new Typed(entries, texts);
    int there = typed.wanted(COUNTED, 0);
    int shown = typed.wanted("shown", 0);
    String note = typed.note(COUNTED + NOTE);
    if (typed.isSound()) {
      var outcome = ledger.count(who.person(), typed.key(), id, shown, there, note);
      told(outcome, COUNTED, typed, after);
    }
    return typed.isSound() ? back(item) : again(item, typed, model);
  }

  @PostMapping("/movements/{movement}/put-right")
  String putRight(
      @PathVariable long id,
      @PathVariable long movement,
      @AuthenticationPrincipal SignedIn who,
      Model model,
      RedirectAttributes after) {
    Item item = level(id).item();
    var wrong = movements.find(item, movement).filter(row -> !row.counter());
    var typed = Typed.nothing(texts);
    var outcome =
        ledger.putRight(who.person(), item, wrong.orElseThrow(LedgerController::notFound), "");
    told(outcome, "ledger", typed, after);
    return typed.isSound() ? back(item) : again(item, typed, model);
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

  private static String back(Item item) {
    return "redirect:/store/items/" + item.id();
  }

  private String again(Item item, Typed typed, Model model) {
    return page(level(item.id()), Long.MAX_VALUE - 1, typed, model);
  }

  private String page(Level level, long before, Typed typed, Model model) {
    var rows = movements.of(level.item(), before, ROWS + 1);
    model.addAttribute("level", level);
    model.addAttribute("rows", rows.stream().limit(ROWS).toList());
    model.addAttribute("older", rows.size() > ROWS ? rows.get(ROWS - 1).id() : null);
    model.addAttribute("typed", typed);
    model.addAttribute("keys", List.of(newKey(), newKey(), newKey()));
    model.addAttribute("zone", ZoneId.systemDefault());
    return "store/item";
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
