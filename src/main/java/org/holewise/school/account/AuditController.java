package org.holewise.school.account;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Who did what when, the latest first. Names are looked up for the page; the notes have none. */
@Controller
@RequestMapping("/audit")
class AuditController {

  private static final int PAGE = 100;

  private final Audit audit;
  private final List<SubjectNames> names;
  private final MessageSource texts;

  AuditController(Audit audit, List<SubjectNames> names, MessageSource texts) {
    this.audit = audit;
    this.names = names;
    this.texts = texts;
  }

  @GetMapping
  String list(
      @RequestParam(defaultValue = "" + Long.MAX_VALUE) long before, Locale locale, Model model) {
    var found = audit.before(before, PAGE + 1);
    var shown = found.subList(0, Math.min(PAGE, found.size()));
    var called = called(shown);
    model.addAttribute("first", before == Long.MAX_VALUE);
    model.addAttribute("more", found.size() > PAGE);
    model.addAttribute("lines", shown.stream().map(e -> line(e, called, locale)).toList());
    return "account/audit";
  }

  /** An act in words. */
  record Line(long id, Instant at, long actor, String actorName, String said, String called) {}

  private Line line(AuditEvent event, Map<String, Map<Long, String>> called, Locale locale) {
    String id = Long.toString(event.subjectId());
    String plain = event.act() + " (" + event.subject() + " {0})";
    String said = texts.getMessage("audit." + event.act(), new Object[] {id}, plain, locale);
    return new Line(
        event.id(),
        event.at(),
        event.actor(),
        event.actorName(),
        said == null ? plain : said,
        called.getOrDefault(event.subject(), Map.of()).getOrDefault(event.subjectId(), ""));
  }

  private Map<String, Map<Long, String>> called(List<AuditEvent> events) {
    var called = new HashMap<String, Map<Long, String>>();
    for (var kind : names) {
      var ids =
          events.stream()
              .filter(event -> event.isAbout(kind.subject()))
              .map(AuditEvent::subjectId)
              .collect(Collectors.toSet());
      if (!ids.isEmpty()) {
        called.put(kind.subject(), kind.of(ids));
      }
    }
    return called;
  }
}
