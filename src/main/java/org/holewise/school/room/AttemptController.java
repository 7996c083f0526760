package org.holewise.school.room;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.exercise.Scheme;
import org.holewise.school.account.SignedIn;
import org.holewise.school.handin.Confirmations;
import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.Overrulings;
import org.holewise.school.session.Bench;
import org.holewise.school.session.LabSession;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What a teacher says of a hand-in: own marks with a reason, and the cause that was found. */
@Controller
@RequestMapping("/sessions/{id}/benches/{seat}/attempts/{number}")
class AttemptController {

  private final Paths paths;
  private final BenchPage page;
  private final AttemptPage attempts;
  private final Overrulings overrulings;
  private final Confirmations confirmations;

  AttemptController(
      Paths paths,
      BenchPage page,
      AttemptPage attempts,
      Overrulings overrulings,
      Confirmations confirmations) {
    this.paths = paths;
    this.page = page;
    this.attempts = attempts;
    this.overrulings = overrulings;
    this.confirmations = confirmations;
  }

  /** Which hand-in a path names. */
  record At(long id, long seat, int number) {
    String redirect() {
      return "redirect:/sessions/" + id + "/benches/" + seat + "?attempt=" + number;
    }
  }

  @ModelAttribute("at")
  At at(@PathVariable long id, @PathVariable long seat, @PathVariable int number) {
    return new At(id, seat, number);
  }

  @PostMapping("/overrulings")
  String overrule(
      @ModelAttribute(name = "at", binding = false) At at,
      @AuthenticationPrincipal SignedIn me,
      @ModelAttribute("overruling") NewOverruling typed,
      BindingResult found,
      Model model,
      RedirectAttributes after) {
    LabSession session = paths.session(at.id());
    Bench bench = paths.bench(session, at.seat());
    HandIn handIn = paths.handIn(bench, at.number());
    Scheme scheme = session.exercise().marks();
    typed.check(scheme, found);
    if (found.hasErrors()) {
      return page.show(session, bench, Optional.of(at.number()), model);
    }
    overrulings.add(
        me.person(),
        handIn,
        typed.wiringOf(scheme).orElseThrow(),
        typed.readingsOf(scheme).orElseThrow(),
        typed.reason());
    after.addFlashAttribute("done", "overruled");
    return at.redirect();
  }

  @PostMapping("/causes")
  String confirm(
      @ModelAttribute(name = "at", binding = false) At at,
      @AuthenticationPrincipal SignedIn me,
      @ModelAttribute("found") NewCause typed,
      BindingResult found,
      Model model,
      RedirectAttributes after) {
    LabSession session = paths.session(at.id());
    Bench bench = paths.bench(session, at.seat());
    HandIn handIn = paths.handIn(bench, at.number());
    List<Causes.Choice> offered = attempts.causes(handIn);
    typed.check(offered, found);
    if (found.hasErrors()) {
      return page.show(session, bench, Optional.of(at.number()), model);
    }
    Causes.Choice chosen = typed.chosen(offered).orElseThrow();
    String where = typed.place().isEmpty() ? chosen.place() : typed.place();
    boolean first = confirmations.add(me.person(), handIn, chosen.kind(), where, typed.note());
    after.addFlashAttribute("done", first ? "confirmed" : "already");
    return at.redirect();
  }
}
