package org.holewise.school.bench;

import java.util.List;
import java.util.Optional;
import org.holewise.school.handin.DraftEntry;
import org.holewise.school.sheet.Said;
import org.springframework.http.HttpStatus;

/**
 * What a form led to, for the page that answers it.
 *
 * @param status of the page
 * @param why what the page says on top; empty where it goes without saying
 * @param kept entries whose typed texts the page shows instead of what is stored
 * @param lines what stays in the box for typed lines
 * @param replaced texts of partners that were replaced unseen
 */
record Answered(
    HttpStatus status,
    Optional<Said> why,
    List<SentEntry> kept,
    TypedLines lines,
    List<DraftEntry> replaced) {

  /** A page that was opened, or a form of which all was kept. */
  static Answered kept(TypedLines lines, List<SentEntry> refused, List<DraftEntry> replaced) {
    boolean all = refused.isEmpty() && lines.left().isEmpty();
    return new Answered(
        all ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT,
        all ? Optional.empty() : Optional.of(Said.of("student.kept.not-all")),
        refused,
        lines,
        replaced);
  }

  static Answered nothing() {
    return kept(TypedLines.NONE, List.of(), List.of());
  }

  /** Nothing could be kept: what was typed stays on the page. */
  static Answered refused(HttpStatus status, Said why, EntryForm form) {
    var lines = new TypedLines(List.of(), form.line().lines().toList(), List.of());
    return new Answered(status, Optional.of(why), form.changed(), lines, List.of());
  }

  /** All is kept, and something has to be put right before the bench can go on. */
  static Answered stopped(HttpStatus status, Said why) {
    return new Answered(status, Optional.of(why), List.of(), TypedLines.NONE, List.of());
  }

  /** Whether there is nothing to say but what the page says anyway. */
  boolean whole() {
    return why.isEmpty() && replaced.isEmpty();
  }
}
