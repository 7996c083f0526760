package org.holewise.school.bench;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.holewise.school.account.SignedIn;
import org.holewise.school.bench.EntriesDocument.Wrong;
import org.holewise.school.handin.Draft;
import org.holewise.school.handin.DraftEntry;
import org.holewise.school.handin.Drafts;
import org.holewise.school.handin.Saved;
import org.holewise.school.handin.SessionClosed;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** What the working page's script reads and writes while somebody types. */
@Controller
@RequestMapping("/bench/{bench}")
class EntriesController {

  private static final int LONGEST_BODY = 256 * 1024;

  private final Workplaces workplaces;
  private final Drafts drafts;
  private final BenchPages pages;
  private final MessageSource words;

  EntriesController(Workplaces workplaces, Drafts drafts, BenchPages pages, MessageSource words) {
    this.workplaces = workplaces;
    this.drafts = drafts;
    this.pages = pages;
    this.words = words;
  }

  @GetMapping("/entries")
  ResponseEntity<Object> entries(
      @PathVariable String bench, @AuthenticationPrincipal SignedIn signedIn) {
    Workplace place = workplaces.find(signedIn, bench);
    var answer = new LinkedHashMap<String, Object>();
    answer.put("open", place.session().isOpen());
    answer.put("entries", rows(place, drafts.of(place.bench())));
    answer.put("problems", problems(place));
    return json(answer);
  }

  @PostMapping(path = "/entries", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Object> save(
      @PathVariable String bench, @AuthenticationPrincipal SignedIn signedIn, InputStream body)
      throws IOException {
    Workplace place = workplaces.find(signedIn, bench);
    byte[] sent = body.readNBytes(LONGEST_BODY + 1);
    if (sent.length > LONGEST_BODY) {
      return problem(HttpStatus.CONTENT_TOO_LARGE, "student.json.large", List.of());
    }
    var document = EntriesDocument.read(sent, place.exercise());
    if (!document.errors().isEmpty()) {
      return problem(HttpStatus.BAD_REQUEST, "student.json.unread", document.errors());
    }
    try {
      return json(answer(place, workplaces.save(place, document.changes())));
    } catch (SessionClosed closed) {
      return problem(HttpStatus.CONFLICT, "student.closed", List.of());
    } catch (DraftFull full) {
      return problem(HttpStatus.UNPROCESSABLE_CONTENT, "student.full", List.of());
    }
  }

  /** The board and what to look at, alone. */
  @GetMapping("/board")
  String board(
      @PathVariable String bench, @AuthenticationPrincipal SignedIn signedIn, Model model) {
    Workplace place = workplaces.find(signedIn, bench);
    model.addAttribute("page", pages.tappable(place));
    return "student/live";
  }

  private Map<String, Object> answer(Workplace place, Saved saved) {
    var answer = new LinkedHashMap<String, Object>();
    answer.put("entries", rows(place, saved.entries()));
    answer.put(
        "replaced",
        saved.replaced().stream()
            .map(was -> Map.of("name", was.name(), "text", was.text(), "by", was.by().name()))
            .toList());
    answer.put("problems", problems(place));
    return answer;
  }

  private Map<String, String> problems(Workplace place) {
    return Draft.of(drafts.of(place.bench()), place.exercise()).problems();
  }

  private static List<Map<String, Object>> rows(Workplace place, List<DraftEntry> entries) {
    return entries.stream().map(entry -> row(place, entry)).toList();
  }

  private static Map<String, Object> row(Workplace place, DraftEntry entry) {
    var row = new LinkedHashMap<String, Object>();
    row.put("name", entry.name());
    row.put("text", entry.text());
    row.put("revision", entry.revision());
    row.put("by", entry.by().name());
    row.put("mine", entry.by().id() == place.student().id());
    return row;
  }

  private static ResponseEntity<Object> json(Object answer) {
    return ResponseEntity.ok().contentType(MediaType.APPLICATION_JSON).body(answer);
  }

  private ResponseEntity<Object> problem(HttpStatus status, String why, List<Wrong> errors) {
    var problem = new LinkedHashMap<String, Object>();
    problem.put("title", status.getReasonPhrase());
    problem.put("status", status.value());
    problem.put("detail", words.getMessage(why, null, Locale.ROOT));
    problem.put("errors", errors.stream().map(this::error).toList());
    return ResponseEntity.status(status)
        .contentType(MediaType.APPLICATION_PROBLEM_JSON)
        .body(problem);
  }

  private Map<String, String> error(Wrong wrong) {
    String text = words.getMessage(wrong.said().key(), wrong.said().named(), Locale.ROOT);
    return Map.of("at", wrong.at(), "text", text);
  }
}
