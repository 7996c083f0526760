package org.holewise.document.lines;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.holewise.document.lines.Statement.Links;
import org.holewise.document.lines.Statement.OnBoard;
import org.holewise.document.lines.Statement.Reads;
import org.holewise.document.lines.Statement.Silent;
import org.holewise.document.lines.Statement.WithMeter;
import org.holewise.document.lines.Statement.Wrong;
import org.holewise.engine.board.BoardModels;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.part.Part;
import org.holewise.engine.reading.Meters;

/** Reads one line by its first word: a keyword, a ref of the exercise or the id of a reading. */
final class LineReader {
  private static final int LONGEST = 200;

  private final Exercise exercise;

  LineReader(Exercise exercise) {
    this.exercise = exercise;
  }

  Statement read(String line) {
    String text = line.strip();
    if (text.isEmpty() || text.startsWith("#")) {
      return new Silent();
    }
    if (text.length() > LONGEST) {
      return Wrong.of("too-long", String.valueOf(LONGEST));
    }
    String[] split = text.split("[\\s:=]+", 2);
    return read(split[0], split.length == 2 ? split[1].strip() : "");
  }

  private Statement read(String name, String rest) {
    return switch (name.toLowerCase(Locale.ROOT)) {
      case "link" -> link(Words.of(rest));
      case "extra" -> rest.isEmpty() ? new Silent() : new ExtraReader(exercise).read(rest);
      case "board" -> board(rest);
      case "meter" -> meter(rest);
      case "reading" -> {
        String[] split = rest.split("[\\s:=]+", 2);
        yield named(split[0], exercise.readings(), Reading::id)
            .map(found -> reading(found, split.length == 2 ? split[1].strip() : ""))
            .orElseGet(() -> unknown(split[0]));
      }
      default -> entry(name, rest);
    };
  }

  private Statement entry(String name, String rest) {
    return named(name, exercise.parts(), Part::ref)
        .map(part -> new PlacingReader(part).read(rest))
        .or(() -> named(name, exercise.readings(), Reading::id).map(found -> reading(found, rest)))
        .orElseGet(() -> unknown(name));
  }

  private Statement unknown(String name) {
    return Wrong.of(
        "unknown-name",
        name,
        String.join(", ", exercise.parts().stream().map(Part::ref).toList()),
        String.join(", ", exercise.readings().stream().map(Reading::id).toList()));
  }

  private static Statement reading(Reading reading, String text) {
    return text.isEmpty() ? new Silent() : new Reads(reading.id(), text);
  }

  private static Statement link(List<String> words) {
    if (words.isEmpty()) {
      return new Silent();
    }
    if (words.size() != 2) {
      return Wrong.of("link-ends", String.valueOf(words.size()));
    }
    Optional<Hole> from = Hole.read(words.get(0));
    Optional<Hole> to = Hole.read(words.get(1));
    return from.isPresent() && to.isPresent()
        ? new Links(new Link(from.get(), to.get()))
        : Wrong.of("no-hole", words.get(from.isEmpty() ? 0 : 1));
  }

  private static Statement board(String name) {
    if (name.isEmpty()) {
      return new Silent();
    }
    return BoardModels.named(name.toLowerCase(Locale.ROOT))
        .<Statement>map(OnBoard::new)
        .orElseGet(() -> Wrong.of("unknown-board", name, String.join(", ", BoardModels.names())));
  }

  private static Statement meter(String name) {
    if (name.isEmpty()) {
      return new Silent();
    }
    return named(name, Meters.names(), known -> known)
        .<Statement>map(WithMeter::new)
        .orElseGet(() -> Wrong.of("unknown-meter", name, String.join(", ", Meters.names())));
  }

  /** The one written exactly so, else the only one written so but for capitals. */
  static <T> Optional<T> named(String name, List<T> all, Function<T, String> key) {
    var exact = all.stream().filter(one -> key.apply(one).equals(name)).findFirst();
    var alike = all.stream().filter(one -> key.apply(one).equalsIgnoreCase(name)).toList();
    return exact.isPresent() || alike.size() != 1 ? exact : Optional.of(alike.get(0));
  }
}
