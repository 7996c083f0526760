package org.holewise.school.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * The text of a part's entry as fields: a hole for each lead, for a chip the hole of its pin 1, and
 * what was read off the part. What cannot be read stands in a field as well, so that whoever typed
 * it sees it.
 *
 * @param holes texts by field, in the order of {@link #names}; empty where none was typed
 */
record PinTexts(Map<String, String> holes, String marked) {

  private static final Pattern MARKED =
      Pattern.compile("(?:^|\\s)marked\\s+(\\S.*)$", Pattern.CASE_INSENSITIVE);

  /** The field that places a whole chip. */
  static final String PIN_1 = "pin1";

  /** The fields of a part's holes: its pins; for a chip one, since all its pins go together. */
  static List<String> names(Part part) {
    return part.kind().footprint(part.fields()) instanceof Footprint.Dip
        ? List.of(PIN_1)
        : part.pins().stream().map(Pin::name).toList();
  }

  /** The texts of fields; those that were not sent are empty. */
  static PinTexts of(Part part, Map<String, String> fields, String marked) {
    var holes = empty(part);
    holes.replaceAll((pin, none) -> closed(fields.getOrDefault(pin, "")));
    return new PinTexts(holes, marked.strip());
  }

  static PinTexts read(Part part, String text) {
    var said = MARKED.matcher(text);
    boolean marked = said.find();
    String seats = (marked ? text.substring(0, said.start()) : text).replaceAll("\\s*=\\s*", "=");
    var holes = empty(part);
    int at = 0;
    for (String word : seats.strip().split("\\s+", -1)) {
      String pin = pin(part, word).filter(p -> isFree(holes, p)).orElse("");
      if (pin.isEmpty()) {
        at = put(holes, word, at);
      } else {
        holes.put(pin, word.substring(word.indexOf('=') + 1));
      }
    }
    return new PinTexts(holes, marked ? said.group(1).strip() : "");
  }

  /** The text of the entry: each hole with its pin, then what is marked. */
  String text() {
    String seats =
        holes.entrySet().stream()
            .filter(seat -> !seat.getValue().isEmpty())
            .map(
                seat ->
                    named(seat.getValue())
                        ? seat.getValue()
                        : seat.getKey() + "=" + seat.getValue())
            .collect(Collectors.joining(" "));
    return (seats + (marked.isEmpty() ? "" : " marked " + marked)).strip();
  }

  /** Whether a field holds pins by name, as somebody typed a chip's one by one. */
  private static boolean named(String text) {
    return text.contains("=");
  }

  private static String closed(String text) {
    return named(text) ? text.strip() : text.replaceAll("\\s+", "");
  }

  private static Map<String, String> empty(Part part) {
    var holes = new LinkedHashMap<String, String>();
    names(part).forEach(pin -> holes.put(pin, ""));
    return holes;
  }

  // A word without a pin's name goes to the next empty field, and what is over to the last one.
  private static int put(Map<String, String> holes, String word, int from) {
    List<String> pins = List.copyOf(holes.keySet());
    int at = from;
    while (at < pins.size() - 1 && !isFree(holes, pins.get(at))) {
      at++;
    }
    holes.merge(pins.get(at), word, (before, more) -> (before + " " + more).strip());
    return at;
  }

  private static boolean isFree(Map<String, String> holes, String pin) {
    return holes.getOrDefault(pin, "").isEmpty();
  }

  private static Optional<String> pin(Part part, String word) {
    int sign = word.indexOf('=');
    return names(part).stream()
        .filter(pin -> sign > 0 && pin.equalsIgnoreCase(word.substring(0, sign)))
        .findFirst();
  }
}
