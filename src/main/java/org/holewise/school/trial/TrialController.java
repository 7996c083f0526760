package org.holewise.school.trial;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.holewise.document.MarkDocument;
import org.holewise.document.MarkRequest;
import org.holewise.document.RecordFindings;
import org.holewise.document.picture.Highlight;
import org.holewise.document.text.Messages;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.marking.Mark;
import org.holewise.engine.marking.Marking;
import org.holewise.school.library.Library;
import org.holewise.school.library.LibraryExercise;
import org.holewise.school.sheet.BenchView;
import org.holewise.school.sheet.ExerciseSheet;
import org.holewise.school.sheet.KeptMark;
import org.holewise.school.sheet.MarkSheet;
import org.holewise.school.sheet.Schematics;
import org.holewise.school.sheet.TypedBuild;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;

/** Marks what is typed into one box; nothing is kept. */
@Controller
@RequestMapping("/try")
class TrialController {
  private static final int FEWEST_ROWS = 12;
  private static final int MOST_ROWS = 40;
  private static final String PAGE = "trial/build";

  private final Library library;
  private final Schematics schematics;
  private final MessageSource words;

  TrialController(Library library, Schematics schematics, MessageSource words) {
    this.library = library;
    this.schematics = schematics;
    this.words = words;
  }

  /** The page is sent in parts, and its form's token needs a session before the first has gone. */
  @ModelAttribute
  void session(CsrfToken token) {
    token.getToken();
  }

  @GetMapping
  String choose(Model model) {
    var exercises = library.exercises().stream().map(LibraryExercise::exercise);
    model.addAttribute("exercises", exercises.map(ExerciseSheet::of).toList());
    return "trial/choose";
  }

  @GetMapping("/{slug}")
  String start(
      @PathVariable String slug,
      @RequestParam(defaultValue = StartingPoints.EMPTY) String start,
      Model model) {
    LibraryExercise entry = entry(slug);
    StartingPoint from =
        starts(entry).stream()
            .filter(point -> point.name().equals(start))
            .findFirst()
            .orElseThrow(TrialController::notFound);
    show(entry, typed(entry, from.lines()), Optional.empty(), model);
    model.addAttribute("started", from.name());
    return PAGE;
  }

  /** Opening again what a form was answered with. */
  @GetMapping({"/{slug}/check", "/{slug}/mark"})
  String again(@PathVariable String slug) {
    return "redirect:/try/" + entry(slug).exercise().slug();
  }

  @PostMapping("/{slug}/check")
  String check(
      @PathVariable String slug,
      @RequestParam(defaultValue = "") String text,
      @RequestParam(defaultValue = "") String add,
      Model model) {
    String longer = add.isEmpty() ? text : (text.stripTrailing() + "\n" + add).strip() + " ";
    LibraryExercise entry = entry(slug);
    show(entry, typed(entry, longer), Optional.empty(), model);
    return PAGE;
  }

  /** What changes on the page while one types. */
  @PostMapping(path = "/{slug}/check", headers = "X-Part=live")
  String live(
      @PathVariable String slug, @RequestParam(defaultValue = "") String text, Model model) {
    LibraryExercise entry = entry(slug);
    show(entry, typed(entry, text), Optional.empty(), model);
    return "trial/live :: live";
  }

  @PostMapping("/{slug}/mark")
  String mark(
      @PathVariable String slug, @RequestParam(defaultValue = "") String text, Model model) {
    LibraryExercise entry = entry(slug);
    TypedBuild typed = typed(entry, text);
    var mark = typed.ready() ? typed.record().map(r -> marked(entry.exercise(), r)) : noMark();
    show(entry, typed, mark, model);
    model.addAttribute("refused", mark.isEmpty());
    return PAGE;
  }

  private static Optional<MarkSheet> noMark() {
    return Optional.empty();
  }

  /** By way of the document, as every mark goes that is kept. */
  private static MarkSheet marked(Exercise exercise, BenchRecord typed) {
    BenchRecord record = RecordFindings.usable(exercise, typed);
    var request = new MarkRequest(exercise, record, RecordFindings.of(exercise, typed), Set.of());
    Mark mark = Marking.mark(exercise, record, Priors.start(), request.ask());
    byte[] document = MarkDocument.bytes(MarkDocument.tree(request, mark, Messages.english()));
    return MarkSheet.of(
        exercise, record, KeptMark.read(new String(document, StandardCharsets.UTF_8)));
  }

  private static TypedBuild typed(LibraryExercise entry, String text) {
    return TypedBuild.read(text, entry.exercise());
  }

  private void show(
      LibraryExercise entry, TypedBuild typed, Optional<MarkSheet> mark, Model model) {
    Exercise exercise = entry.exercise();
    var build = typed.record().flatMap(BenchRecord::build);
    var highlight = mark.map(MarkSheet::highlight).orElse(Highlight.NONE);
    model.addAttribute("sheet", ExerciseSheet.of(exercise));
    model.addAttribute("schematic", schematics.of(exercise));
    model.addAttribute("typed", typed);
    model.addAttribute("wrong", typed.wrongLines());
    model.addAttribute("rows", rows(typed));
    model.addAttribute("bench", BenchView.of(exercise, build, highlight));
    model.addAttribute("mark", mark.orElse(null));
    model.addAttribute("examples", starts(entry));
    model.addAttribute("started", "");
    model.addAttribute("refused", false);
  }

  private static List<Integer> rows(TypedBuild typed) {
    int lines = (int) typed.text().lines().count() + 1;
    int rows = Math.min(MOST_ROWS, Math.max(FEWEST_ROWS, lines));
    return IntStream.rangeClosed(1, rows).boxed().toList();
  }

  private List<StartingPoint> starts(LibraryExercise entry) {
    return StartingPoints.of(
        entry,
        words.getMessage("trial.start.empty", null, Locale.ROOT),
        words.getMessage("trial.start.checked", null, Locale.ROOT));
  }

  private LibraryExercise entry(String slug) {
    return library.find(slug).orElseThrow(TrialController::notFound);
  }

  private static ResponseStatusException notFound() {
    return new ResponseStatusException(HttpStatus.NOT_FOUND);
  }
}
