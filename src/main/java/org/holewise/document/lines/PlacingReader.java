package org.holewise.document.lines;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.holewise.document.lines.Statement.Places;
import org.holewise.document.lines.Statement.Silent;
import org.holewise.document.lines.Statement.Wrong;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Placed;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * Reads where a part was placed: its holes in the order of its pins, or each by its pin's name; a
 * chip also by the hole of its first pin alone.
 */
final class PlacingReader {
  /** Where a chip's first pin sits, given instead of its holes. */
  static final String FIRST_PIN = "pin1";

  private static final Pattern MARKED =
      Pattern.compile("(?:^|\\s)marked\\s+(\\S.*)$", Pattern.CASE_INSENSITIVE);

  private final Part part;
  private final List<String> pins;

  PlacingReader(Part part) {
    this.part = part;
    this.pins = part.pins().stream().map(Pin::name).toList();
  }

  Statement read(String text) {
    var said = MARKED.matcher(text);
    Optional<String> marked = said.find() ? Optional.of(said.group(1).strip()) : Optional.empty();
    String holes = marked.isPresent() ? text.substring(0, said.start()) : text;
    List<String> words = Words.of(holes.replaceAll("\\s*=\\s*", "="));
    if (words.isEmpty() && marked.isEmpty()) {
      return new Silent();
    }
    boolean named = words.stream().anyMatch(word -> word.contains("="));
    return named ? byName(words, marked) : inOrder(words, marked);
  }

  private Statement inOrder(List<String> words, Optional<String> marked) {
    if (words.size() == 1 && part.kind().footprint(part.fields()) instanceof Footprint.Dip) {
      return Hole.read(words.get(0))
          .<Statement>map(first -> places(Map.of(), Optional.of(first), marked))
          .orElseGet(() -> Wrong.of("no-hole", words.get(0)));
    }
    if (words.size() != pins.size()) {
      return Wrong.of(
          "lead-count",
          part.ref(),
          String.valueOf(pins.size()),
          String.join(", ", pins),
          String.valueOf(words.size()));
    }
    var holes = new LinkedHashMap<String, Hole>();
    for (int i = 0; i < pins.size(); i++) {
      var hole = Hole.read(words.get(i));
      if (hole.isEmpty()) {
        return Wrong.of("no-hole", words.get(i));
      }
      holes.put(pins.get(i), hole.get());
    }
    return places(holes, Optional.empty(), marked);
  }

  private Statement byName(List<String> words, Optional<String> marked) {
    var holes = new LinkedHashMap<String, Hole>();
    for (String word : words) {
      var wrong = put(word, holes);
      if (wrong.isPresent()) {
        return wrong.get();
      }
    }
    var first = Optional.ofNullable(holes.remove(FIRST_PIN));
    boolean alone = first.isEmpty() && holes.keySet().equals(Set.of(pins.get(0)));
    return alone && part.kind().footprint(part.fields()) instanceof Footprint.Dip
        ? places(Map.of(), Optional.ofNullable(holes.get(pins.get(0))), marked)
        : places(holes, first, marked);
  }

  private Places places(Map<String, Hole> holes, Optional<Hole> first, Optional<String> marked) {
    var placed = new Placed(part.ref(), holes, first, marked).seated(part);
    return new Places(placed.ref(), placed.holes(), placed.pin1(), placed.marked());
  }

  private Optional<Wrong> put(String word, Map<String, Hole> holes) {
    String[] sides = word.split("=", 2);
    if (sides.length != 2) {
      return Optional.of(Wrong.of("mixed-holes", part.ref(), word));
    }
    var pin =
        sides[0].equalsIgnoreCase(FIRST_PIN)
            ? Optional.of(FIRST_PIN)
            : LineReader.named(sides[0], pins, name -> name);
    if (pin.isEmpty()) {
      return Optional.of(Wrong.of("no-pin", part.ref(), sides[0], String.join(", ", pins)));
    }
    var hole = Hole.read(sides[1]);
    if (hole.isEmpty()) {
      return Optional.of(Wrong.of("no-hole", sides[1]));
    }
    return holes.put(pin.get(), hole.get()) == null
        ? Optional.empty()
        : Optional.of(Wrong.of("pin-twice", part.ref(), pin.get()));
  }
}
