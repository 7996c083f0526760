package org.holewise.school.room;

import java.util.Optional;
import org.holewise.school.account.SignedIn;
import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.HandIns;
import org.holewise.school.handin.HelpCalls;
import org.holewise.school.handin.Looks;
import org.holewise.school.session.Bench;
import org.holewise.school.session.LabSession;
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
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** One bench: what it does now, what it handed in, and the visits of teachers. */
@Controller
@RequestMapping("/sessions/{id}/benches/{seat}")
class BenchController {

  /** How the draft is asked for, where hand-ins are numbers. */
  private static final String DRAFT = "draft";

  private final Paths paths;
  private final BenchPage page;
  private final HandIns handIns;
  private final Looks looks;
  private final HelpCalls calls;

  BenchController(Paths paths, BenchPage page, HandIns handIns, Looks looks, HelpCalls calls) {
    this.paths = paths;
    this.page = page;
    this.handIns = handIns;
    this.looks = looks;
    this.calls = calls;
  }

  /** {@code attempt}: a number or {@code draft}; else the last hand-in, or the draft before it. */
  @GetMapping
  String show(
      @PathVariable long id,
      @PathVariable long seat,
      @RequestParam Optional<String> attempt,
      Model model) {
    LabSession session = paths.session(id);
    Bench bench = paths.bench(session, seat);
    Optional<Integer> number = attempt.isPresent() ? asked(attempt.get()) : last(bench);
    return page.show(session, bench, number, model);
  }

  @PostMapping("/looks")
  String look(
      @PathVariable long id,
      @PathVariable long seat,
      @AuthenticationPrincipal SignedIn me,
      @ModelAttribute("look") NewLook look,
      BindingResult found,
      Model model,
      RedirectAttributes after) {
    LabSession session = paths.session(id);
    Bench bench = paths.bench(session, seat);
    if (look.tooLong()) {
      found.rejectValue("seen", "bench.text.long");
      return page.show(session, bench, last(bench), model);
    }
    looks.add(me.person(), bench, look.seen());
    after.addFlashAttribute("done", "seen");
    return at(session, bench);
  }

  @PostMapping("/help-ended")
  String answered(@PathVariable long id, @PathVariable long seat, RedirectAttributes after) {
    LabSession session = paths.session(id);
    Bench bench = paths.bench(session, seat);
    calls.end(bench);
    after.addFlashAttribute("done", "answered");
    return at(session, bench);
  }

  private Optional<Integer> last(Bench bench) {
    return handIns.of(bench).stream().map(HandIn::number).max(Integer::compare);
  }

  private static Optional<Integer> asked(String attempt) {
    return attempt.equals(DRAFT)
        ? Optional.empty()
        : Optional.of(WholeNumber.read(attempt, 1, Integer.MAX_VALUE).orElseThrow(Paths::notThere));
  }

  private static String at(LabSession session, Bench bench) {
    return "redirect:/sessions/" + session.id() + "/benches/" + bench.id();
  }
}
