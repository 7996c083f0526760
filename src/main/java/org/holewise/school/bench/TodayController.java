package org.holewise.school.bench;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.holewise.school.account.Person;
import org.holewise.school.account.SignedIn;
import org.holewise.school.session.Bench;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSession;
import org.holewise.school.sheet.Said;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Where a student begins: the open session of the class, and a bench in it. */
@Controller
@RequestMapping("/today")
class TodayController {

  private static final String NUMBER = "[0-9]{1,6}";

  private final TodayPages pages;
  private final Benches benches;

  TodayController(TodayPages pages, Benches benches) {
    this.pages = pages;
    this.benches = benches;
  }

  @GetMapping
  ModelAndView today(@AuthenticationPrincipal SignedIn signedIn) {
    return show(signedIn.person(), HttpStatus.OK, Optional.empty());
  }

  /** Opening again what a form was answered with. */
  @GetMapping("/{session}/bench")
  ModelAndView again(@PathVariable String session) {
    return BenchController.seeOther("/today");
  }

  @PostMapping("/{session}/bench")
  ModelAndView join(
      @PathVariable String session,
      @RequestParam(defaultValue = "") String number,
      @AuthenticationPrincipal SignedIn signedIn) {
    Person student = signedIn.person();
    LabSession chosen = pages.session(student, Workplaces.number(session));
    if (!chosen.isOpen()) {
      return refuse(student, Said.of("student.today.closed"));
    }
    if (!number.matches(NUMBER)) {
      return refuse(student, Said.of("student.today.no-bench"));
    }
    int wanted = Integer.parseInt(number);
    return switch (benches.join(chosen, wanted, student)) {
      case HERE -> BenchController.seeOther("/bench/" + numbered(chosen, wanted).id());
      case FULL -> refuse(student, Said.of("student.today.is-full", wanted));
      case ELSEWHERE -> refuse(student, Said.of("student.today.elsewhere"));
      case NO_SUCH_BENCH -> refuse(student, Said.of("student.today.no-bench"));
    };
  }

  private Bench numbered(LabSession session, int number) {
    return benches.of(session).stream()
        .filter(bench -> bench.number() == number)
        .findFirst()
        .orElseThrow(Workplaces::notFound);
  }

  private ModelAndView refuse(Person student, Said why) {
    return show(student, HttpStatus.CONFLICT, Optional.of(why));
  }

  private ModelAndView show(Person student, HttpStatus status, Optional<Said> refused) {
    var model = new HashMap<String, Object>(Map.of("page", pages.of(student)));
    refused.ifPresent(why -> model.put("refused", why));
    return new ModelAndView("student/today", model, status);
  }
}
