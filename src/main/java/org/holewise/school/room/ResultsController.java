package org.holewise.school.room;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.holewise.school.csv.Csv;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSession;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The marks of a session as a table, a row a student; the last hand-in counts. */
@Controller
class ResultsController {

  private static final List<String> HEADER =
      List.of(
          "class",
          "exercise",
          "day",
          "bench",
          "student",
          "attempts",
          "wiring",
          "readings",
          "total",
          "of",
          "overruled",
          "reason",
          "handed in at",
          "held");

  /** As spreadsheets read a time; in the school's zone, as on its pages. */
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss");

  private final Paths paths;
  private final Classes classes;
  private final Benches benches;
  private final Attempts attempts;
  private final ZoneId zone;

  ResultsController(Paths paths, Classes classes, Benches benches, Attempts attempts, ZoneId zone) {
    this.paths = paths;
    this.classes = classes;
    this.benches = benches;
    this.attempts = attempts;
    this.zone = zone;
  }

  @GetMapping("/sessions/{id}/marks.csv")
  ResponseEntity<byte[]> table(@PathVariable long id) {
    LabSession session = paths.session(id);
    List<List<Object>> rows =
        Standing.of(
                classes.students(session.group()), benches.of(session), attempts.byMember(session))
            .stream()
            .map(standing -> row(session, standing))
            .toList();
    return new Csv(HEADER, rows).file(fileName(session));
  }

  private List<Object> row(LabSession session, Standing standing) {
    Optional<Attempt> last = standing.last();
    Optional<Result> result = last.flatMap(Attempt::result);
    Optional<Result.Own> own = result.flatMap(Result::own);
    return List.of(
        session.group().name(),
        session.exercise().title(),
        session.plannedFor(),
        orEmpty(standing.bench()),
        standing.student().name(),
        standing.attempts().size(),
        orEmpty(result.map(Result::wiring)),
        orEmpty(result.map(Result::readings)),
        orEmpty(result.map(Result::total)),
        orEmpty(result.map(marked -> marked.points().of())),
        orEmpty(result.map(marked -> yes(own.isPresent()))),
        orEmpty(own.map(Result.Own::reason)),
        orEmpty(last.map(attempt -> TIME.format(attempt.at().atZone(zone)))),
        orEmpty(result.map(marked -> yes(marked.held()))));
  }

  private static Object orEmpty(Optional<?> cell) {
    return cell.isPresent() ? cell.get() : "";
  }

  private static String yes(boolean is) {
    return is ? "yes" : "no";
  }

  private static String fileName(LabSession session) {
    String words = session.group().name() + " " + session.exercise().slug();
    String plain = words.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    return "marks-" + plain + "-" + session.plannedFor() + ".csv";
  }
}
