package org.holewise.document.lines;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.holewise.document.lines.Statement.Wrong;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Occasion;
import org.holewise.engine.quantity.Parsed;
import org.holewise.engine.quantity.QuantityText;
import org.holewise.engine.quantity.Unit;

/**
 * Takes {@code when condition}, {@code after pulses} and {@code at frequency} out of a line,
 * wherever in it they stand.
 */
final class OccasionReader {
  private final Exercise exercise;
  private String rest;
  private Optional<Wrong> wrong = Optional.empty();

  OccasionReader(Exercise exercise, String text) {
    this.exercise = exercise;
    this.rest = text;
  }

  /** What is left of the line. */
  String rest() {
    return rest;
  }

  Optional<Wrong> wrong() {
    return wrong;
  }

  Occasion read() {
    String when = word("when").map(this::condition).orElse(exercise.conditions().get(0).name());
    int after = word("after").map(this::pulses).orElse(0);
    var hertz = word("at").map(this::hertz);
    return new Occasion(when, after, hertz.orElse(OptionalDouble.empty()));
  }

  /** The word after a word, both taken out of the line. */
  private Optional<String> word(String before) {
    Matcher said =
        Pattern.compile("^(.*)\\s" + before + "\\s+(\\S+)(.*)$", Pattern.CASE_INSENSITIVE)
            .matcher(rest);
    if (!said.matches()) {
      return Optional.empty();
    }
    rest = said.group(1) + said.group(3);
    return Optional.of(said.group(2));
  }

  private String condition(String name) {
    var condition = LineReader.named(name, exercise.conditions(), Condition::name);
    if (condition.isEmpty()) {
      wrong = Optional.of(Wrong.of("unknown-condition", name, conditions()));
    }
    return condition.map(Condition::name).orElse(name);
  }

  private int pulses(String word) {
    if (!word.matches("[0-9]{1,5}")) {
      wrong = Optional.of(Wrong.of("extra-after", word));
      return 0;
    }
    return Integer.parseInt(word);
  }

  private OptionalDouble hertz(String word) {
    if (QuantityText.parse(word, Unit.HERTZ) instanceof Parsed.Value value && value.si() > 0) {
      return OptionalDouble.of(value.si());
    }
    wrong = Optional.of(Wrong.of("extra-hertz", word));
    return OptionalDouble.empty();
  }

  private String conditions() {
    return String.join(", ", exercise.conditions().stream().map(Condition::name).toList());
  }
}
