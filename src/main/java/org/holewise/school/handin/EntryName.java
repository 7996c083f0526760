package org.holewise.school.handin;

import java.util.Optional;
import java.util.regex.Pattern;
import org.holewise.engine.exercise.Exercise;

/**
 * What an entry of a draft is about: {@code part:R1}, {@code reading:supply}, or a link or extra
 * reading under an id that its page made up, {@code link:k3x9}.
 */
public record EntryName(Kind kind, String id) {

  private static final Pattern MADE_UP = Pattern.compile("[a-z0-9]{1,24}");

  /** In the order in which a build is written down. */
  public enum Kind {
    PART,
    LINK,
    READING,
    EXTRA;

    public String word() {
      return switch (this) {
        case PART -> "part";
        case LINK -> "link";
        case READING -> "reading";
        case EXTRA -> "extra";
      };
    }
  }

  /** Reads a name; empty where the exercise has no such part or reading, or it is no name. */
  public static Optional<EntryName> read(String text, Exercise exercise) {
    for (Kind kind : Kind.values()) {
      String start = kind.word() + ":";
      if (text.startsWith(start)) {
        return Optional.of(new EntryName(kind, text.substring(start.length())))
            .filter(name -> name.isKnownIn(exercise));
      }
    }
    return Optional.empty();
  }

  /** Whether its id is one that a page made up. */
  public boolean isMadeUp() {
    return kind == Kind.LINK || kind == Kind.EXTRA;
  }

  /** Whether a name is of a part or a link. */
  public static boolean isLayout(String name) {
    return name.startsWith("part:") || name.startsWith("link:");
  }

  private boolean isKnownIn(Exercise exercise) {
    return switch (kind) {
      case PART -> exercise.part(id).isPresent();
      case READING -> exercise.readings().stream().anyMatch(reading -> reading.id().equals(id));
      case LINK, EXTRA -> MADE_UP.matcher(id).matches();
    };
  }

  /** The entry as a typed line. */
  String line(String text) {
    String start =
        switch (kind) {
          case PART, READING -> id;
          case LINK -> "link";
          case EXTRA -> "extra";
        };
    return start + " " + text;
  }

  @Override
  public String toString() {
    return kind.word() + ":" + id;
  }
}
