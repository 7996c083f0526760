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

  /** A hand-in where its path leads. */
  record Place(LabSession session, Bench bench, HandIn handIn) {

    Scheme scheme() {
      return session.exercise().marks();
    }

    String redirect() {
      return "redirect:/sessions/%d/benches/%d?attempt=%d"
          .formatted(session.id(), bench.id(), handIn.number());
    }
  }

  @ModelAttribute("at")
  Place at(@PathVariable long id, @PathVariable long seat, @PathVariable int number) {
    LabSession session = paths.session(id);
    Bench bench = paths.bench(session, seat);
    return new Place(session, bench, paths.handIn(bench, number));
  }

  @PostMapping("/overrulings")
  String overrule(
      @ModelAttribute(name = "at", binding = false) Place at,
      @AuthenticationPrincipal SignedIn me,
      @ModelAttribute("overruling") NewOverruling typed,
      BindingResult found,
      Model model,
      RedirectAttributes after) {
    typed.check(at.scheme(), found);
    if (found.hasErrors()) {
      return again(at, model);
    }
    overrulings.add(
        me.person(),
        at.handIn(),
        typed.wiringOf(at.scheme()).orElseThrow(),
        typed.readingsOf(at.scheme()).orElseThrow(),
        typed.reason());
    after.addFlashAttribute("done", "overruled");
    return at.redirect();
  }

  @PostMapping("/causes")
  String confirm(
      @ModelAttribute(name = "at", binding = false) Place at,
      @AuthenticationPrincipal SignedIn me,
      @ModelAttribute("found") NewCause typed,
      BindingResult found,
      Model model,
      RedirectAttributes after) {
    List<Causes.Choice> offered = attempts.causes(at.handIn());
    typed.check(offered, found);
    if (found.hasErrors()) {
      return again(at, model);
    }
    Causes.Choice chosen = typed.chosen(offered).orElseThrow();
    String where = typed.place().isEmpty() ? chosen.place() : typed.place();
    confirmations.add(me.person(), at.session(), at.handIn(), chosen.kind(), where, typed.note());
    after.addFlashAttribute("done", "confirmed");
    return at.redirect();
  }

  private String again(Place at, Model model) {
    return page.show(at.session(), at.bench(), Optional.of(at.handIn().number()), model);
  }
}
