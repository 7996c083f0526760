package org.holewise.school.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.holewise.document.lines.BuildLines;
import org.holewise.document.text.Messages;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.part.Part;
import org.holewise.school.account.Sha256;
import org.holewise.school.handin.Change;
import org.holewise.school.handin.EntryName;
import org.holewise.school.sheet.Said;

/**
 * The box for typed lines: each line is an entry of the draft, or stays in the box with a word on
 * why.
 *
 * @param left what stays in the box
 */
record TypedLines(List<Change> changes, List<String> left, List<Said> problems) {

  static final TypedLines NONE = new TypedLines(List.of(), List.of(), List.of());

  static TypedLines read(EntryForm form, Exercise exercise) {
    var read = new TypedLines(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (String line : form.line().lines().map(String::strip).toList()) {
      if (!line.isEmpty() && !line.startsWith("#")) {
        read.add(line, form, exercise);
      }
    }
    return read;
  }

  private void add(String line, EntryForm form, Exercise exercise) {
    if (line.length() > EntryForm.LONGEST_LINE) {
      leave(line, Said.of("student.line.long", EntryForm.LONGEST_LINE));
      return;
    }
    String[] words = line.split("[\\s:=]+", 2);
    String rest = words.length == 2 ? words[1].strip() : "";
    if (words[0].equalsIgnoreCase("reading") && !rest.isEmpty()) {
      words = rest.split("[\\s:=]+", 2);
      rest = words.length == 2 ? words[1].strip() : "";
    }
    var name = name(words[0], form.key() + "\n" + line, exercise);
    if (name.isEmpty()) {
      leave(line, unknown(line, exercise));
    } else if (rest.isEmpty()) {
      leave(line, Said.of("student.line.alone", words[0]));
    } else {
      long base = form.find(name.get().toString()).map(SentEntry::base).orElse(0L);
      changes.add(new Change(name.get().toString(), rest, base));
    }
  }

  private void leave(String line, Said why) {
    left.add(line);
    problems.add(why);
  }

  private static Optional<EntryName> name(String word, String seed, Exercise exercise) {
    if (word.equalsIgnoreCase("link")) {
      return Optional.of(new EntryName(EntryName.Kind.LINK, madeUp(seed)));
    }
    if (word.equalsIgnoreCase("extra")) {
      return Optional.of(new EntryName(EntryName.Kind.EXTRA, madeUp(seed)));
    }
    return named(word, exercise.parts().stream().map(Part::ref).toList())
        .map(ref -> new EntryName(EntryName.Kind.PART, ref))
        .or(
            () ->
                named(word, exercise.readings().stream().map(Reading::id).toList())
                    .map(id -> new EntryName(EntryName.Kind.READING, id)));
  }

  // The same line of the same page is the same entry, however often it is sent.
  private static String madeUp(String seed) {
    return "t" + Sha256.hex(seed).toLowerCase(Locale.ROOT).substring(0, 16);
  }

  private static Optional<String> named(String word, List<String> names) {
    return Stream.concat(
            names.stream().filter(word::equals), names.stream().filter(word::equalsIgnoreCase))
        .findFirst();
  }

  private static Said unknown(String line, Exercise exercise) {
    return BuildLines.read(line, exercise).lines().get(0).problem().stream()
        .map(problem -> Said.of("student.line.says", problem.text(Messages.english())))
        .findFirst()
        .orElse(Said.of("student.line.settled"));
  }
}
