package org.holewise.document.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.holewise.document.lines.Statement.ReadsExtra;
import org.holewise.document.lines.Statement.Silent;
import org.holewise.document.lines.Statement.Wrong;
import org.holewise.engine.board.Hole;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Occasion;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * Reads {@code [id] kind points value [when condition] [after pulses] [at frequency]}: a reading
 * that was asked for. The occasion may also stand before the value; without a value the line is not
 * yet filled in.
 */
final class ExtraReader {
  private final Exercise exercise;

  ExtraReader(Exercise exercise) {
    this.exercise = exercise;
  }

  Statement read(String text) {
    var occasion = new OccasionReader(exercise, text);
    Occasion when = occasion.read();
    if (occasion.wrong().isPresent()) {
      return occasion.wrong().get();
    }
    var words = new ArrayList<>(List.of(occasion.rest().strip().split("\\s+")));
    String id = Measure.KEYS.contains(words.get(0).toLowerCase(Locale.ROOT)) ? "" : words.remove(0);
    if (words.isEmpty() || !Measure.KEYS.contains(words.get(0).toLowerCase(Locale.ROOT))) {
      return Wrong.of("extra-kind", String.join(", ", Measure.KEYS));
    }
    return read(id, words, when);
  }

  private Statement read(String id, List<String> words, Occasion when) {
    String kind = words.remove(0).toLowerCase(Locale.ROOT);
    boolean alone = kind.equals("ohms") && words.removeIf(word -> word.equalsIgnoreCase("alone"));
    int points = points(kind);
    if (words.size() < points) {
      return Wrong.of("extra-points", kind, String.valueOf(points));
    }
    for (String word : words.subList(0, points)) {
      if (!known(kind, word)) {
        return Wrong.of(
            Measure.AT_A_LEAD.contains(kind)
                ? "no-lead"
                : kind.equals("seen") ? "no-part" : "no-point",
            word,
            String.join(", ", exercise.parts().stream().map(Part::ref).toList()));
      }
    }
    String choice = choice(kind, words, points);
    String value = String.join(" ", words.subList(points, words.size()));
    return value.isEmpty()
        ? new Silent()
        : new ReadsExtra(id, measure(kind, words, alone, choice), when, value);
  }

  private static int points(String kind) {
    return Measure.BETWEEN.contains(kind) ? 2 : Measure.COMPARED.contains(kind) ? 4 : 1;
  }

  /** Takes what was chosen out of the words; the usual where nothing was. */
  private static String choice(String kind, List<String> words, int at) {
    List<String> choices = Measure.Compared.choices(kind);
    String word = words.size() > at ? words.get(at) : "";
    Optional<String> chosen = choices.stream().filter(word::equalsIgnoreCase).findFirst();
    chosen.ifPresent(one -> words.remove(at));
    return chosen.or(() -> choices.stream().findFirst()).orElse("");
  }

  private boolean known(String kind, String word) {
    return Measure.AT_A_LEAD.contains(kind)
        ? pin(word).isPresent()
        : kind.equals("seen") ? part(word).isPresent() : probe(word).isPresent();
  }

  private Measure measure(String kind, List<String> words, boolean alone, String choice) {
    if (Measure.AT_A_LEAD.contains(kind)) {
      return Measure.at(kind, pin(words.get(0)).orElseThrow());
    }
    if (kind.equals("seen")) {
      return new Measure.Seen(part(words.get(0)).orElseThrow().ref());
    }
    Measure.Pair first = pair(words, 0);
    return Measure.COMPARED.contains(kind)
        ? Measure.compared(kind, first, pair(words, 2), choice)
        : Measure.between(kind, first.red(), first.black(), alone);
  }

  private Measure.Pair pair(List<String> words, int from) {
    return new Measure.Pair(
        probe(words.get(from)).orElseThrow(), probe(words.get(from + 1)).orElseThrow());
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
}
