package org.holewise.school.room;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.holewise.school.account.SignedIn;
import org.holewise.school.library.ExerciseVersions;
import org.holewise.school.library.Library;
import org.holewise.school.library.LibraryExercise;
import org.holewise.school.roster.ClassGroup;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.HintStep;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSession.State;
import org.holewise.school.session.LabSessions;
import org.holewise.school.session.Plan;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** All sessions, and the plan of a new one. */
@Controller
@RequestMapping("/sessions")
class SessionsController {

  private final LabSessions sessions;
  private final Classes classes;
  private final Library library;
  private final ExerciseVersions versions;
  private final Clock clock;

  SessionsController(
      LabSessions sessions,
      Classes classes,
      Library library,
      ExerciseVersions versions,
      Clock clock) {
    this.sessions = sessions;
    this.classes = classes;
    this.library = library;
    this.versions = versions;
    this.clock = clock;
  }

  @GetMapping
  String list(Model model) {
    LocalDate today = LocalDate.now(clock);
    List<LabSession> all = sessions.all();
    Predicate<LabSession> now =
        session ->
            session.isOpen()
                || session.plannedFor().equals(today) && session.state() == State.PLANNED;
    Predicate<LabSession> planned = now.negate().and(session -> session.state() == State.PLANNED);
    var soonest = Comparator.comparing(LabSession::plannedFor).thenComparing(LabSession::id);
    model.addAttribute("now", cards(all.stream().filter(now).sorted(soonest).toList()));
    model.addAttribute("planned", cards(all.stream().filter(planned).sorted(soonest).toList()));
    model.addAttribute(
        "past", cards(all.stream().filter(session -> session.state() == State.CLOSED).toList()));
    model.addAttribute("anyClass", !classes.all().isEmpty());
    return "room/sessions";
  }

  @GetMapping("/new")
  String fresh(Model model) {
    return page(model.addAttribute("plan", NewSession.usual(LocalDate.now(clock))));
  }

  @PostMapping
  String plan(
      @AuthenticationPrincipal SignedIn teacher,
      @ModelAttribute("plan") NewSession typed,
      BindingResult found,
      Model model,
      RedirectAttributes after) {
    Optional<ClassGroup> group = typed.groupId().flatMap(classes::find);
    Optional<LibraryExercise> exercise = library.find(typed.exercise());
    if (group.isEmpty()) {
      found.rejectValue("group", "sessions.group.missing");
    }
    if (exercise.isEmpty()) {
      found.rejectValue("exercise", "sessions.exercise.missing");
    }
    typed.check(LocalDate.now(clock), found);
    if (found.hasErrors()) {
      return page(model);
    }
    Plan plan =
        new Plan(
            group.orElseThrow(),
            versions.of(exercise.orElseThrow()),
            typed.date().orElseThrow(),
            typed.places().orElseThrow(),
            typed.step().orElseThrow(),
            typed.looksFirst());
    after.addFlashAttribute("done", "planned");
    return "redirect:/sessions/" + sessions.plan(teacher.person(), plan).id();
  }

  private String page(Model model) {
    model.addAttribute("classes", classes.all());
    model.addAttribute("exercises", library.exercises().stream().map(Choice::of).toList());
    model.addAttribute("steps", HintStep.values());
    return "room/plan";
  }

  /** An exercise to choose. */
  record Choice(String slug, String title) {
    static Choice of(LibraryExercise entry) {
      return new Choice(entry.exercise().slug(), entry.exercise().title());
    }
  }

  private static List<SessionCard> cards(List<LabSession> sessions) {
    return sessions.stream().map(SessionCard::of).toList();
  }
}
