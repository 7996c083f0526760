package org.holewise.school.store;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.holewise.engine.board.BoardModels;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Registry;
import org.holewise.engine.reading.Meters;

/**
 * What tells a part of exercises from others in a drawer: its kind, then what its label says, such
 * as {@code resistor 330 Ω}, {@code led red}, {@code battery 9 V}. What is as usual is left out, so
 * that an exercise which says 5 % and one which says nothing take from the same drawer. Boards and
 * meters are told by their model. Immutable.
 */
record PartKey(String text) {

  /** As much as the store's list keeps. */
  static final int LONGEST = 100;

  private static final String BOARD = "board";
  private static final String METER = "meter";

  static PartKey of(Part part) {
    return cut(Traits.of(part.kind()).text(part.fields()));
  }

  static PartKey board(Exercise exercise) {
    return cut(BOARD + " " + exercise.board().name());
  }

  static PartKey meter(Exercise exercise) {
    return cut(METER + " " + exercise.meter());
  }

  /** What somebody typed, in any case, order and prefix; empty where it names no part. */
  static Optional<PartKey> read(String typed) {
    var words = List.of(typed.strip().split("\\s+"));
    var rest = words.subList(1, words.size());
    String kind = words.get(0).toLowerCase(Locale.ROOT);
    return switch (kind) {
      case BOARD -> model(BOARD, rest, BoardModels.names());
      case METER -> model(METER, rest, Meters.names());
      default ->
          Registry.kind(kind).flatMap(known -> Traits.of(known).read(rest)).map(PartKey::cut);
    };
  }

  /** The first word: the kind of part, or {@code board} or {@code meter}. */
  String kind() {
    return text.split(" ", 2)[0];
  }

  /** What follows the kind; may be empty. */
  String rest() {
    return text.substring(kind().length()).strip();
  }

  /** Whether it is lent with every kit rather than put into it. */
  boolean equipment() {
    return kind().equals(BOARD) || kind().equals(METER);
  }

  private static Optional<PartKey> model(String kind, List<String> words, List<String> known) {
    String name = String.join(" ", words);
    return known.stream()
        .filter(name::equalsIgnoreCase)
        .findFirst()
        .map(model -> cut(kind + " " + model));
  }

  private static PartKey cut(String text) {
    return new PartKey(text.length() > LONGEST ? text.substring(0, LONGEST).strip() : text);
  }
}
