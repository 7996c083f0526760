package org.holewise.document.lines;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Occasion;

/** What one typed line says. */
sealed interface Statement {

  /** A blank line, a note, or a name whose value has not been filled in yet. */
  record Silent() implements Statement {}

  record Places(String ref, Map<String, Hole> holes, Optional<Hole> pin1, Optional<String> marked)
      implements Statement {}

  record Links(Link link) implements Statement {}

  record Reads(String id, String text) implements Statement {}

  /** {@code id} is empty where the line gave none. */
  record ReadsExtra(String id, Measure measure, Occasion occasion, String text)
      implements Statement {}

  record OnBoard(BoardModel board) implements Statement {}

  record WithMeter(String meter) implements Statement {}

  /** A line that cannot be used: the key of its sentence and what the sentence names. */
  record Wrong(String kind, List<String> parts) implements Statement {
    static Wrong of(String kind, String... parts) {
      return new Wrong(kind, List.of(parts));
    }
  }
}
