package org.holewise.school.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.holewise.school.account.SignedIn;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
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

/** The kits of a session: packed before it, taken back after it. */
@Controller
@RequestMapping("/store/sessions/{id}")
class PackingController {

  private final LabSessions sessions;
  private final Packings packings;
  private final Items items;
  private final Ledger ledger;
  private final Texts texts;

  PackingController(
      LabSessions sessions, Packings packings, Items items, Ledger ledger, Texts texts) {
    this.sessions = sessions;
    this.packings = packings;
    this.items = items;
    this.ledger = ledger;
    this.texts = texts;
  }

  @GetMapping
  String show(@PathVariable long id, Model model) {
    return page(session(id), Typed.nothing(texts), model);
  }

  /** A field {@code pack-7} says how many of item 7; {@code other} names one more item. */
  @PostMapping("/packed")
  String pack(
      @PathVariable long id,
      @RequestParam Map<String, String> entries,
      @AuthenticationPrincipal SignedIn who,
      Model model,
      RedirectAttributes after) {
    var session = session(id);
    var typed = new Typed(entries, texts);
    var lines = new ArrayList<Slip.Line>();
    var sheet = sheet(session);
    for (PackingSheet.Row row : sheet.rows()) {
      add(lines, row.item(), Act.PACKED, typed.quantity("pack-" + row.item().id()));
    }
    int more = typed.quantity("other-quantity");
    var other = other(sheet, typed.text("other", ""));
    other.ifPresent(item -> add(lines, item, Act.PACKED, more));
    if (more > 0 && other.isEmpty()) {
      typed.refuse("other", "store.pack.other.missing");
    }
    write(session, lines, typed, who, after);
    return typed.isSound() ? back(session) : page(session, typed, model);
  }

  /** Fields {@code back-7}, {@code used-7} and {@code broken-7} say what became of item 7. */
  @PostMapping("/returned")
  String takeBack(
      @PathVariable long id,
      @RequestParam Map<String, String> entries,
      @AuthenticationPrincipal SignedIn who,
      Model model,
      RedirectAttributes after) {
    var session = session(id);
    var typed = new Typed(entries, texts);
    var lines = new ArrayList<Slip.Line>();
    for (PackingSheet.Row row : sheet(session).out()) {
      Item item = row.item();
      add(lines, item, Act.RETURNED, typed.quantity("back-" + item.id()));
      add(lines, item, Act.USED_UP, typed.quantity("used-" + item.id()));
      add(lines, item, Act.BROKEN_IN_CLASS, typed.quantity("broken-" + item.id()));
    }
    write(session, lines, typed, who, after);
    return typed.isSound() ? back(session) : page(session, typed, model);
  }

  private static void add(List<Slip.Line> lines, Item item, Act act, int quantity) {
    if (quantity > 0) {
      lines.add(Slip.Line.of(item.id(), act, quantity));
    }
  }

  private static Optional<Item> other(PackingSheet sheet, String typed) {
    return sheet.others().stream()
        .filter(item -> Long.toString(item.id()).equals(typed))
        .findFirst();
  }

  private void write(
      LabSession session,
      List<Slip.Line> lines,
      Typed typed,
      SignedIn who,
      RedirectAttributes after) {
    String key = typed.key();
    if (lines.isEmpty() && typed.isSound()) {
      typed.refuse("nothing", "store.pack.nothing");
    }
    if (!typed.isSound()) {
      return;
    }
    var slip = new Slip(key, Optional.of(session.id()), typed.note("note"), List.copyOf(lines));
    var outcome = ledger.write(who.person(), slip);
    if (outcome instanceof Outcome.TooFew few) {
      few.shortages().forEach(shortage -> typed.refuse(field(shortage), shortage));
    } else if (outcome instanceof Outcome.Already) {
      after.addFlashAttribute("already", texts.say("store.already"));
    } else {
      boolean packed = lines.get(0).from() == Place.STORE;
      after.addFlashAttribute("done", texts.say(packed ? "store.done.packed" : "store.done.back"));
    }
  }

  private static String field(Outcome.Shortage shortage) {
    String way = shortage.place() == Place.STORE ? "pack-" : "back-";
    return way + shortage.item().id();
  }

  private static String back(LabSession session) {
    return "redirect:/store/sessions/" + session.id();
  }

  private String page(LabSession session, Typed typed, Model model) {
    var sheet = sheet(session);
    model.addAttribute("plan", session);
    model.addAttribute("sheet", sheet);
    model.addAttribute(
        "unlisted",
        sheet.unlisted().stream()
            .map(need -> texts.unlisted(need.part(), need.refs(), need.total()))
            .toList());
    model.addAttribute("typed", typed);
    model.addAttribute("keys", List.of(newKey(), newKey()));
    return "store/session";
  }

  private PackingSheet sheet(LabSession session) {
    return PackingSheet.of(packings.of(session), items.all());
  }

  private static String newKey() {
    return UUID.randomUUID().toString();
  }

  private LabSession session(long id) {
    return sessions.find(id).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
  }
}
