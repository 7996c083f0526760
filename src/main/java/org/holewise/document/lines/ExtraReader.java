package org.holewise.document.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.holewise.document.lines.Statement.ReadsExtra;
import org.holewise.document.lines.Statement.Silent;
import org.holewise.document.lines.Statement.Wrong;
import org.holewise.engine.board.Hole;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * Reads {@code [id] kind points value [when condition]}: a reading that was asked for. The
 * condition may also stand before the value; without a value the line is not yet filled in.
 */
final class ExtraReader {
  private static final List<String> KINDS = List.of("volts", "amps", "ohms", "joined", "seen");
  private static final Pattern WHEN =
      Pattern.compile("^(.*)\\swhen\\s+(\\S+)(.*)$", Pattern.CASE_INSENSITIVE);

  private final Exercise exercise;

  ExtraReader(Exercise exercise) {
    this.exercise = exercise;
  }

  Statement read(String text) {
    String when = exercise.conditions().get(0).name();
    var said = WHEN.matcher(text);
    if (said.matches()) {
      var condition = LineReader.named(said.group(2), exercise.conditions(), Condition::name);
      if (condition.isEmpty()) {
        return Wrong.of("unknown-condition", said.group(2), conditions());
      }
      when = condition.get().name();
      text = said.group(1) + said.group(3);
    }
    var words = new ArrayList<>(List.of(text.strip().split("\\s+")));
    String id = KINDS.contains(words.get(0).toLowerCase(Locale.ROOT)) ? "" : words.remove(0);
    if (words.isEmpty() || !KINDS.contains(words.get(0).toLowerCase(Locale.ROOT))) {
      return Wrong.of("extra-kind", String.join(", ", KINDS));
    }
    return read(id, words, when);
  }

  private Statement read(String id, List<String> words, String when) {
    String kind = words.remove(0).toLowerCase(Locale.ROOT);
    boolean alone = kind.equals("ohms") && words.removeIf(word -> word.equalsIgnoreCase("alone"));
    int points = kind.equals("amps") || kind.equals("seen") ? 1 : 2;
    if (words.size() < points) {
      return Wrong.of("extra-points", kind, String.valueOf(points));
    }
    for (String word : words.subList(0, points)) {
      if (!known(kind, word)) {
        return Wrong.of(
            kind.equals("amps") ? "no-lead" : kind.equals("seen") ? "no-part" : "no-point",
            word,
            String.join(", ", exercise.parts().stream().map(Part::ref).toList()));
      }
    }
    String value = String.join(" ", words.subList(points, words.size()));
    return value.isEmpty()
        ? new Silent()
        : new ReadsExtra(id, measure(kind, words, alone), when, value);
  }

  private boolean known(String kind, String word) {
    return switch (kind) {
      case "seen" -> part(word).isPresent();
      case "amps" -> pin(word).isPresent();
      default -> probe(word).isPresent();
    };
  }

  private Measure measure(String kind, List<String> words, boolean alone) {
    return switch (kind) {
      case "seen" -> new Measure.Seen(part(words.get(0)).orElseThrow().ref());
      case "amps" -> new Measure.Amps(pin(words.get(0)).orElseThrow());
      default -> {
        Probe one = probe(words.get(0)).orElseThrow();
        Probe other = probe(words.get(1)).orElseThrow();
        yield switch (kind) {
          case "ohms" -> new Measure.Ohms(one, other, alone);
          case "joined" -> new Measure.Joined(one, other);
          default -> new Measure.Volts(one, other);
        };
      }
    };
  }

  private Optional<Probe> probe(String word) {
    return pin(word).map(Probe::at).or(() -> Hole.read(word).map(Probe::at));
  }

  private Optional<Part> part(String word) {
    return LineReader.named(word, exercise.parts(), Part::ref);
  }

  private Optional<Pin> pin(String word) {
    return Pin.read(word)
        .flatMap(
            pin ->
                part(pin.ref())
                    .flatMap(part -> LineReader.named(pin.name(), part.pins(), Pin::name)));
  }

  private String conditions() {
    return String.join(", ", exercise.conditions().stream().map(Condition::name).toList());
  }
}
