package org.holewise.school.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.holewise.engine.exercise.Exercise;
import org.holewise.school.handin.Change;
import org.holewise.school.handin.EntryName;
import org.springframework.http.HttpStatus;
import org.springframework.util.MultiValueMap;
import org.springframework.web.server.ResponseStatusException;

/**
 * The form of the working page as it was sent: a field for each lead, link end and reading, and for
 * each entry the text and revision that the page was made with. Immutable.
 *
 * @param act what the button of an entry asks for
 * @param to the part of the page where the student was
 */
record EntryForm(
    List<SentEntry> entries, String line, String key, Optional<Change> act, String to) {

  /** As long as a line may be. */
  static final int LONGEST_LINE = 200;

  /** Reads a form; a field for something that the exercise lacks is a bad request. */
  static EntryForm read(MultiValueMap<String, String> sent, Exercise exercise) {
    var fields = new LinkedHashMap<String, Map<String, String>>();
    for (String name : sent.keySet()) {
      if (isOfPins(name) && name.indexOf(':') != name.lastIndexOf(':')) {
        int end = name.lastIndexOf(':');
        fields
            .computeIfAbsent(name.substring(0, end), entry -> new LinkedHashMap<>())
            .put(name.substring(end + 1), first(sent, name));
      } else if (isOfPins(name) || name.startsWith("reading:") || name.startsWith("extra:")) {
        fields.put(name, new LinkedHashMap<>(Map.of("", first(sent, name))));
      }
    }
    var entries = new ArrayList<SentEntry>();
    fields.forEach(
        (entry, texts) ->
            entries.add(
                SentEntry.of(
                    EntryName.read(entry, exercise).orElseThrow(EntryForm::unknown),
                    texts,
                    first(sent, "was:" + entry),
                    number(first(sent, "base:" + entry)),
                    exercise)));
    return new EntryForm(
        List.copyOf(entries),
        first(sent, "line"),
        first(sent, "key"),
        pressed(sent, exercise),
        first(sent, "to"));
  }

  /** What differs from the page as it was sent and can be kept. */
  List<Change> changes() {
    return entries.stream()
        .filter(SentEntry::changed)
        .filter(entry -> entry.tooLong().isEmpty())
        .map(SentEntry::change)
        .toList();
  }

  /** What was typed and is too long to be kept. */
  List<SentEntry> refused() {
    return entries.stream().filter(entry -> !entry.tooLong().isEmpty()).toList();
  }

  /** What differs from the page as it was sent. */
  List<SentEntry> changed() {
    return entries.stream().filter(SentEntry::changed).toList();
  }

  Optional<SentEntry> find(String name) {
    return entries.stream().filter(entry -> entry.name().toString().equals(name)).findFirst();
  }

  /** Where on the page the student was, as the end of an address. */
  String place() {
    return to.matches("[a-z]{1,20}") ? "#" + to : "";
  }

  /** Everything that the form says, the same for the same entries. */
  String content() {
    var all = new TreeMap<String, String>();
    entries.forEach(entry -> all.put(entry.name().toString(), entry.text()));
    return all + "\n" + line;
  }

  // An entry's own button: to take it out, or to take a partner's text back.
  private static Optional<Change> pressed(MultiValueMap<String, String> sent, Exercise exercise) {
    String back = first(sent, "back");
    String name = back.isEmpty() ? first(sent, "out") : back;
    String text = back.isEmpty() ? "" : first(sent, "theirs:" + back);
    return EntryName.read(name, exercise)
        .filter(known -> text.length() <= Change.LONGEST)
        .map(known -> new Change(name, text, number(first(sent, "base:" + name))));
  }

  private static boolean isOfPins(String name) {
    return Stream.of("part:", "link:").anyMatch(name::startsWith);
  }

  private static String first(MultiValueMap<String, String> sent, String name) {
    return Optional.ofNullable(sent.getFirst(name)).orElse("");
  }

  private static long number(String text) {
    return text.matches("[0-9]{1,18}") ? Long.parseLong(text) : 0;
  }

  static ResponseStatusException unknown() {
    return new ResponseStatusException(HttpStatus.BAD_REQUEST);
  }
}
