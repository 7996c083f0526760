package org.holewise.school.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.part.Part;
import org.holewise.school.handin.Change;
import org.holewise.school.handin.EntryName;

/**
 * An entry as a form sent it.
 *
 * @param fields what was typed, by field
 * @param was the entry's text when the page was made, {@code base} its revision
 * @param text what the fields make
 * @param tooLong names of fields with more than can be kept
 */
record SentEntry(
    EntryName name,
    Map<String, String> fields,
    String was,
    long base,
    String text,
    boolean changed,
    List<String> tooLong) {

  /** The field of what was read off a part. */
  static final String MARKED = "marked";

  static final String FROM = "from";
  static final String TO = "to";

  static final int LONGEST_HOLE = 20;
  static final int LONGEST_MARKING = 60;
  static final int LONGEST_READING = 100;
  static final int LONGEST_EXTRA = 190;

  static SentEntry of(
      EntryName name, Map<String, String> fields, String was, long base, Exercise exercise) {
    String text =
        switch (name.kind()) {
          case PART -> pins(exercise.part(name.id()).orElseThrow(), fields).text();
          case LINK -> ends(fields);
          case READING, EXTRA -> fields.getOrDefault("", "");
        };
    boolean same = before(name, was, exercise).equals(before(name, text, exercise));
    List<String> tooLong =
        same
            ? List.of()
            : fields.keySet().stream()
                .filter(
                    field -> fields.getOrDefault(field, "").strip().length() > longest(name, field))
                .toList();
    return new SentEntry(name, fields, was, base, text, !same, tooLong);
  }

  Change change() {
    return new Change(name.toString(), text, base);
  }

  /** The fields that show a text. */
  static Map<String, String> fields(EntryName name, String text, Exercise exercise) {
    return switch (name.kind()) {
      case PART -> pins(PinTexts.read(exercise.part(name.id()).orElseThrow(), text));
      case LINK -> ends(text);
      case READING, EXTRA -> Map.of("", text);
    };
  }

  // Two texts that the fields show alike are one: "b10 b14" and "1=b10 2=b14".
  private static Map<String, String> before(EntryName name, String text, Exercise exercise) {
    return fields(name, new Change("", text, 0).text(), exercise);
  }

  private static PinTexts pins(Part part, Map<String, String> fields) {
    for (String field : fields.keySet()) {
      if (!field.equals(MARKED) && !PinTexts.names(part).contains(field)) {
        throw EntryForm.unknown();
      }
    }
    return PinTexts.of(part, fields, fields.getOrDefault(MARKED, ""));
  }

  private static Map<String, String> pins(PinTexts texts) {
    var fields = new LinkedHashMap<>(texts.holes());
    fields.put(MARKED, texts.marked());
    return fields;
  }

  private static String ends(Map<String, String> fields) {
    if (!List.of(FROM, TO).containsAll(fields.keySet())) {
      throw EntryForm.unknown();
    }
    return (fields.getOrDefault(FROM, "").replaceAll("\\s+", "")
            + " "
            + fields.getOrDefault(TO, "").replaceAll("\\s+", ""))
        .strip();
  }

  private static Map<String, String> ends(String text) {
    String[] words = text.strip().split("\\s+", 2);
    var fields = new LinkedHashMap<String, String>();
    fields.put(FROM, words[0]);
    fields.put(TO, words.length > 1 ? words[1] : "");
    return fields;
  }

  static int longest(EntryName name, String field) {
    return switch (name.kind()) {
      case PART -> field.equals(MARKED) ? LONGEST_MARKING : LONGEST_HOLE;
      case LINK -> LONGEST_HOLE;
      case READING -> LONGEST_READING;
      case EXTRA -> LONGEST_EXTRA;
    };
  }
}
