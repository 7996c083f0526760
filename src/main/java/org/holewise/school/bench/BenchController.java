package org.holewise.school.bench;

import java.util.Map;
import java.util.function.BiFunction;
import org.holewise.school.account.SignedIn;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.view.RedirectView;

/** The working page of a bench: what is typed is kept first, whatever is asked for. */
@Controller
@RequestMapping("/bench/{bench}")
class BenchController {

  private final Workplaces workplaces;
  private final BenchPages pages;
  private final Desk desk;

  BenchController(Workplaces workplaces, BenchPages pages, Desk desk) {
    this.workplaces = workplaces;
    this.pages = pages;
    this.desk = desk;
  }

  @GetMapping
  ModelAndView work(@PathVariable String bench, @AuthenticationPrincipal SignedIn signedIn) {
    return show(workplaces.find(signedIn, bench), Answered.nothing());
  }

  /** Opening again what a form was answered with. */
  @GetMapping({"/draft", "/gate", "/hand-ins", "/help", "/help/ended"})
  ModelAndView again(@PathVariable String bench, @AuthenticationPrincipal SignedIn signedIn) {
    return seeOther(workplaces.find(signedIn, bench).path());
  }

  @PostMapping("/draft")
  ModelAndView save(
      @PathVariable String bench,
      @RequestParam MultiValueMap<String, String> sent,
      @AuthenticationPrincipal SignedIn signedIn) {
    return answer(bench, sent, signedIn, desk::keep);
  }

  @PostMapping("/gate")
  ModelAndView ask(
      @PathVariable String bench,
      @RequestParam MultiValueMap<String, String> sent,
      @AuthenticationPrincipal SignedIn signedIn) {
    return answer(bench, sent, signedIn, desk::ask);
  }

  @PostMapping("/hand-ins")
  ModelAndView handIn(
      @PathVariable String bench,
      @RequestParam MultiValueMap<String, String> sent,
      @AuthenticationPrincipal SignedIn signedIn) {
    return answer(bench, sent, signedIn, desk::handIn);
  }

  @PostMapping("/help")
  ModelAndView callTeacher(
      @PathVariable String bench,
      @RequestParam MultiValueMap<String, String> sent,
      @AuthenticationPrincipal SignedIn signedIn) {
    return answer(bench, sent, signedIn, desk::callTeacher);
  }

  @PostMapping("/help/ended")
  ModelAndView callOff(
      @PathVariable String bench,
      @RequestParam MultiValueMap<String, String> sent,
      @AuthenticationPrincipal SignedIn signedIn) {
    return answer(bench, sent, signedIn, desk::callOff);
  }

  private ModelAndView answer(
      String bench,
      MultiValueMap<String, String> sent,
      SignedIn signedIn,
      BiFunction<Workplace, EntryForm, Outcome> act) {
    Workplace place = workplaces.find(signedIn, bench);
    var form = EntryForm.read(sent, place.exercise());
    Outcome outcome = act.apply(place, form);
    return outcome.answered().whole() ? seeOther(outcome.goOn()) : show(place, outcome.answered());
  }

  private ModelAndView show(Workplace place, Answered answered) {
    return new ModelAndView(
        "student/bench", Map.of("page", pages.of(place, answered)), answered.status());
  }

  /** What a form was sent for is done; the page to look at now is another. */
  static ModelAndView seeOther(String path) {
    var other = new RedirectView(path, true, true, false);
    other.setStatusCode(HttpStatus.SEE_OTHER);
    return new ModelAndView(other);
  }
}
