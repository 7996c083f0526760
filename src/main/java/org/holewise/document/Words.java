package org.holewise.document;

import java.util.Optional;
import java.util.regex.Pattern;
import org.holewise.document.shape.TextShape;
import org.holewise.engine.board.Hole;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.part.Pin;

/** The small texts that documents are made of: refs, ids, pins, holes. */
final class Words {
  private static final String REF = "[A-Za-z][A-Za-z0-9_+-]{0,31}";
  private static final String PIN = REF + "\\.[A-Za-z0-9_+-]{1,16}";
  private static final String HOLE =
      "([1-9]:)?([+\\-\u2212][ajAJ]([1-9][0-9]{0,2})?"
          + "|[a-jA-J][\\-\u2212]?[1-9][0-9]{0,2}|[1-9][0-9]{0,2}[a-jA-J])";

  static final TextShape<String> SLUG =
      TextShape.word(64, "^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$", "not-a-slug");
  static final TextShape<String> REFERENCE = TextShape.word(32, "^" + REF + "$", "not-a-ref");
  static final TextShape<String> ID =
      TextShape.word(48, "^[A-Za-z0-9][A-Za-z0-9_.-]{0,47}$", "not-an-id");
  static final TextShape<Pin> ITS_PIN =
      new TextShape<>(49, Pattern.compile("^" + PIN + "$"), Pin::read, "not-a-pin");
  static final TextShape<Hole> ITS_HOLE =
      new TextShape<>(12, Pattern.compile("^ *" + HOLE + " *$"), Hole::read, "not-a-hole");
  static final TextShape<Probe> AT_PIN =
      new TextShape<>(
          49, ITS_PIN.pattern(), text -> Pin.read(text).map(Probe::at), ITS_PIN.otherwise());
  static final TextShape<Probe> ANYWHERE =
      new TextShape<>(
          49, Pattern.compile("^( *" + HOLE + " *|" + PIN + ")$"), Words::probe, "not-a-probe");

  private Words() {}

  private static Optional<Probe> probe(String text) {
    return Hole.read(text).map(Probe::at).or(() -> Pin.read(text).map(Probe::at));
  }
}
