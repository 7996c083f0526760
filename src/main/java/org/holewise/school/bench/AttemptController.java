package org.holewise.school.bench;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import java.util.Optional;
import org.holewise.school.account.SignedIn;
import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.HandIns;
import org.holewise.school.handin.KeyTaken;
import org.holewise.school.handin.SessionClosed;
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

/** A hand-in: what its mark says as far as the hints go, and the reading that it asks for. */
@Controller
@RequestMapping("/bench/{bench}/attempts/{number}")
class AttemptController {

  private final Workplaces workplaces;
  private final HandIns handIns;
  private final AttemptPages pages;
  private final Answering answering;

  AttemptController(
      Workplaces workplaces, HandIns handIns, AttemptPages pages, Answering answering) {
    this.workplaces = workplaces;
    this.handIns = handIns;
    this.pages = pages;
    this.answering = answering;
  }

  @GetMapping
  ModelAndView attempt(
      @PathVariable String bench,
      @PathVariable String number,
      @AuthenticationPrincipal SignedIn signedIn,
      HttpServletResponse response) {
    Workplace place = workplaces.find(signedIn, bench);
    return show(place, handIn(place, number), "", Optional.empty(), HttpStatus.OK, response);
  }

  /** Opening again what a form was answered with. */
  @GetMapping("/answers")
  ModelAndView again(
      @PathVariable String bench,
      @PathVariable String number,
      @AuthenticationPrincipal SignedIn signedIn) {
    Workplace place = workplaces.find(signedIn, bench);
    return BenchController.seeOther(path(place, handIn(place, number)));
  }

  @PostMapping("/answers")
  ModelAndView answer(
      @PathVariable String bench,
      @PathVariable String number,
      @RequestParam(defaultValue = "") String key,
      @RequestParam(defaultValue = "") String asked,
      @RequestParam(defaultValue = "") String text,
      @AuthenticationPrincipal SignedIn signedIn,
      HttpServletResponse response) {
    Workplace place = workplaces.find(signedIn, bench);
    HandIn handIn = handIn(place, number);
    try {
      var refused = answering.give(place, handIn, key, asked, text);
      return refused.isEmpty()
          ? BenchController.seeOther(path(place, handIn) + "#mark")
          : show(place, handIn, text, refused, HttpStatus.UNPROCESSABLE_CONTENT, response);
    } catch (SessionClosed closed) {
      var why = Optional.of(Said.of("student.answer.closed"));
      return show(place, handIn, text, why, HttpStatus.CONFLICT, response);
    } catch (KeyTaken taken) {
      var why = Optional.of(Said.of("student.answer.taken"));
      return show(place, handIn, text, why, HttpStatus.CONFLICT, response);
    }
  }

  private HandIn handIn(Workplace place, String number) {
    long wanted = Workplaces.number(number);
    return Optional.of(wanted)
        .filter(n -> n <= Integer.MAX_VALUE)
        .flatMap(n -> handIns.find(place.bench(), n.intValue()))
        .orElseThrow(Workplaces::notFound);
  }

  // A page that waits for its mark looks again by itself, without a script.
  private ModelAndView show(
      Workplace place,
      HandIn handIn,
      String typed,
      Optional<Said> refused,
      HttpStatus status,
      HttpServletResponse response) {
    var page = pages.of(place, handIn, typed, refused);
    if (refused.isEmpty() && (page.sheet().isEmpty() || page.waits())) {
      response.setHeader("Refresh", "2");
    }
    String view = page.sheet().isEmpty() ? "student/marking" : "student/attempt";
    return new ModelAndView(view, Map.of("page", page), status);
  }

  private static String path(Workplace place, HandIn handIn) {
    return place.path() + "/attempts/" + handIn.number();
  }
}
