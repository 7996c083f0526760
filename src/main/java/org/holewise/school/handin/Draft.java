package org.holewise.school.handin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.document.lines.BuildLines;
import org.holewise.document.lines.Line;
import org.holewise.document.lines.Sheet;
import org.holewise.document.text.Messages;
import org.holewise.document.text.Texts;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.reading.Meters;
import org.holewise.engine.reading.Taken;

/**
 * A bench's entries as one build: typed lines in the order of parts, links, readings and extras.
 * Immutable.
 */
public final class Draft {

  private final List<Entry> entries;
  private final Exercise exercise;
  private final Sheet sheet;

  private record Entry(EntryName name, String text) {

    String line() {
      return name.line(text);
    }
  }

  private Draft(List<Entry> entries, Exercise exercise) {
    this.entries = entries;
    this.exercise = exercise;
    this.sheet = BuildLines.read(joined(entries), exercise);
  }

  public static Draft of(List<DraftEntry> entries, Exercise exercise) {
    var known = new ArrayList<Entry>();
    for (DraftEntry entry : entries) {
      if (!entry.text().isEmpty()) {
        EntryName.read(entry.name(), exercise)
            .ifPresent(name -> known.add(new Entry(name, entry.text())));
      }
    }
    known.sort(
        Comparator.comparing((Entry entry) -> entry.name().kind())
            .thenComparing(entry -> place(entry.name(), exercise)));
    return new Draft(List.copyOf(known), exercise);
  }

  /** The whole draft as typed lines. */
  public String lines() {
    return joined(entries);
  }

  /** Where the leads are, as typed lines: parts and links alone. */
  public String layout() {
    return joined(entries.stream().filter(entry -> isLayout(entry.name())).toList());
  }

  /** The lines as read. */
  public Sheet sheet() {
    return sheet;
  }

  /** What the sound lines make. */
  public BenchRecord record() {
    return sheet.record();
  }

  /** What is wrong with entries, in words, by their names. */
  public Map<String, String> problems() {
    var problems = new LinkedHashMap<String, String>();
    for (int i = 0; i < entries.size(); i++) {
      Line line = sheet.lines().get(i);
      String name = entries.get(i).name().toString();
      line.problem().ifPresent(problem -> problems.put(name, problem.text(Messages.english())));
    }
    problems.putAll(unreadable());
    return problems;
  }

  // A reading that could mean two things is asked about, not guessed.
  private Map<String, String> unreadable() {
    var texts = new Texts(Messages.english(), exercise, Optional.empty(), false);
    var meter = Meters.named(record().meter()).orElseThrow();
    var unreadable = new LinkedHashMap<String, String>();
    for (Reading reading : exercise.readings()) {
      Optional.ofNullable(record().readings().get(reading.id()))
          .flatMap(written -> Taken.of(reading.measure(), written, meter).unreadable())
          .ifPresent(why -> unreadable.put("reading:" + reading.id(), texts.unreadable(why)));
    }
    return unreadable;
  }

  /** Which entry stands on a line, counted from 1. */
  public Optional<EntryName> nameOf(int line) {
    return line < 1 || line > entries.size()
        ? Optional.empty()
        : Optional.of(entries.get(line - 1).name());
  }

  private static boolean isLayout(EntryName name) {
    return name.kind() == EntryName.Kind.PART || name.kind() == EntryName.Kind.LINK;
  }

  // Links and extras stay in the order in which they were begun.
  private static int place(EntryName name, Exercise exercise) {
    return switch (name.kind()) {
      case PART -> exercise.parts().stream().map(p -> p.ref()).toList().indexOf(name.id());
      case READING -> exercise.readings().stream().map(r -> r.id()).toList().indexOf(name.id());
      case LINK, EXTRA -> 0;
    };
  }

  private static String joined(List<Entry> entries) {
    var lines = new StringBuilder();
    entries.forEach(entry -> lines.append(entry.line()).append('\n'));
    return lines.toString();
  }
}
