package org.holewise.school.room;

import java.util.List;
import org.holewise.school.account.Person;
import org.holewise.school.account.SignedIn;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.Bench;
import org.holewise.school.session.Benches;
import org.holewise.school.session.HintStep;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.holewise.school.sheet.ExerciseSheet;
import org.holewise.school.sheet.Schematics;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** One session: how it goes, how far hints go, who sits where, what the class trips over. */
@Controller
@RequestMapping("/sessions/{id}")
class SessionController {

  private final Paths paths;
  private final LabSessions sessions;
  private final Benches benches;
  private final Classes classes;
  private final Room room;
  private final Schematics schematics;

  SessionController(
      Paths paths,
      LabSessions sessions,
      Benches benches,
      Classes classes,
      Room room,
      Schematics schematics) {
    this.paths = paths;
    this.sessions = sessions;
    this.benches = benches;
    this.classes = classes;
    this.room = room;
    this.schematics = schematics;
  }

  @GetMapping
  String show(@PathVariable long id, Model model) {
    LabSession session = paths.session(id);
    List<BenchProgress> now = room.of(session);
    List<Bench> seats = now.stream().map(BenchProgress::bench).toList();
    model.addAttribute("lab", SessionCard.of(session));
    model.addAttribute("hint", session.hint());
    model.addAttribute("lookFirst", session.lookFirst());
    model.addAttribute("steps", HintStep.values());
    model.addAttribute("sheet", ExerciseSheet.of(session.exercise()));
    model.addAttribute("schematic", schematics.of(session.exercise()));
    model.addAttribute("notes", session.version().notes());
    model.addAttribute("seats", seats);
    model.addAttribute("anyone", seats.stream().anyMatch(seat -> !seat.members().isEmpty()));
    model.addAttribute("absent", absent(session, seats));
    model.addAttribute("stumbles", Stumble.of(now));
    model.addAttribute("handed", now.stream().filter(bench -> bench.last().isPresent()).count());
    return "room/session";
  }

  @PostMapping("/opened")
  String open(
      @PathVariable long id, @AuthenticationPrincipal SignedIn me, RedirectAttributes after) {
    sessions.open(me.person(), paths.session(id).id());
    return done(id, "opened", after);
  }

  @PostMapping("/closed")
  String close(
      @PathVariable long id, @AuthenticationPrincipal SignedIn me, RedirectAttributes after) {
    sessions.close(me.person(), paths.session(id).id());
    return done(id, "closed", after);
  }

  @PostMapping("/released")
  String release(
      @PathVariable long id, @AuthenticationPrincipal SignedIn me, RedirectAttributes after) {
    sessions.release(me.person(), paths.session(id).id());
    return done(id, "released", after);
  }

  @PostMapping("/withheld")
  String withhold(
      @PathVariable long id, @AuthenticationPrincipal SignedIn me, RedirectAttributes after) {
    sessions.withhold(me.person(), paths.session(id).id());
    return done(id, "withheld", after);
  }

  @PostMapping("/settings")
  String settle(
      @PathVariable long id,
      @AuthenticationPrincipal SignedIn me,
      @RequestParam HintStep hint,
      @RequestParam(defaultValue = "false") boolean lookFirst,
      RedirectAttributes after) {
    sessions.settle(me.person(), paths.session(id).id(), hint, lookFirst);
    return done(id, "settled", after);
  }

  /** Seats a student of the class, or somebody who has a bench here; 0 is no bench. */
  @PostMapping("/members")
  String seat(
      @PathVariable long id,
      @AuthenticationPrincipal SignedIn me,
      @RequestParam long student,
      @RequestParam int number,
      RedirectAttributes after) {
    LabSession session = paths.session(id);
    Person person = student(session, student);
    boolean known = true;
    if (number == 0) {
      benches.unseat(me.person(), session, person);
    } else {
      known = benches.move(me.person(), session, person, number);
    }
    if (!known) {
      throw Paths.notThere();
    }
    after.addFlashAttribute("who", person.name());
    after.addFlashAttribute("where", number);
    return done(id, number == 0 ? "unseated" : "seated", after);
  }

  private Person student(LabSession session, long id) {
    List<Bench> seats = benches.of(session);
    return java.util.stream.Stream.concat(
            classes.students(session.group()).stream(),
            seats.stream().flatMap(bench -> bench.members().stream()))
        .filter(person -> person.id() == id)
        .findFirst()
        .orElseThrow(Paths::notThere);
  }

  private List<Person> absent(LabSession session, List<Bench> seats) {
    return classes.students(session.group()).stream()
        .filter(student -> seats.stream().noneMatch(bench -> bench.has(student)))
        .toList();
  }

  private static String done(long id, String what, RedirectAttributes after) {
    after.addFlashAttribute("done", what);
    return "redirect:/sessions/" + id;
  }
}
