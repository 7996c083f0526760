package org.holewise.school.bench;

import java.util.Optional;
import org.holewise.document.lines.BuildLines;
import org.holewise.document.text.Messages;
import org.holewise.document.text.Texts;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Extra;
import org.holewise.engine.reading.Meters;
import org.holewise.engine.reading.Taken;
import org.holewise.school.handin.Answers;
import org.holewise.school.handin.Change;
import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.MarkingQueue;
import org.holewise.school.handin.Request;
import org.holewise.school.sheet.Said;
import org.springframework.stereotype.Component;

/** Takes in the reading that an attempt asked for, and has the attempt marked again with it. */
@Component
class Answering {

  private static final String EXTRA = "extra ";

  private final Answers answers;
  private final MarkingQueue queue;

  Answering(Answers answers, MarkingQueue queue) {
    this.answers = answers;
    this.queue = queue;
  }

  /**
   * Gives an answer.
   *
   * @param asked the line that was asked for, without its value
   * @return why it cannot be taken; empty where it was
   */
  Optional<Said> give(Workplace place, HandIn handIn, String key, String asked, String text) {
    if (!Request.isKey(key)) {
      throw EntryForm.unknown();
    }
    if (text.isBlank()) {
      return Optional.of(Said.of("student.answer.empty"));
    }
    if (text.length() > SentEntry.LONGEST_READING) {
      return Optional.of(Said.of("student.long", SentEntry.LONGEST_READING));
    }
    String line = new Change("", asked + " " + text, 0).text();
    var refused = problem(place.exercise(), line);
    if (refused.isEmpty()) {
      answers.give(place.student(), place.session(), handIn, key, line);
      queue.now(handIn);
    }
    return refused;
  }

  private static Optional<Said> problem(Exercise exercise, String line) {
    var sheet = BuildLines.read(EXTRA + line, exercise);
    var wrong = sheet.lines().get(0).problem();
    if (wrong.isPresent()) {
      return Optional.of(Said.of("student.line.says", wrong.get().text(Messages.english())));
    }
    if (sheet.record().extra().isEmpty()) {
      return Optional.of(Said.of("student.answer.empty"));
    }
    var meter = Meters.named(exercise.meter()).orElseThrow();
    Extra extra = sheet.record().extra().get(0);
    var texts = new Texts(Messages.english(), exercise, Optional.empty(), false);
    return Taken.of(extra.measure(), extra.value(), meter)
        .unreadable()
        .map(why -> Said.of("student.line.says", texts.unreadable(why)));
  }
}
