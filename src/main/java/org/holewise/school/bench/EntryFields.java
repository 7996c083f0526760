package org.holewise.school.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.document.text.Messages;
import org.holewise.document.text.Texts;
import org.holewise.engine.board.Hole;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.PartValue;
import org.holewise.engine.quantity.Unit;
import org.holewise.school.bench.BenchPage.FieldView;
import org.holewise.school.bench.BenchPage.Fields;
import org.holewise.school.bench.BenchPage.Note;
import org.holewise.school.bench.BenchPage.PartFields;
import org.holewise.school.bench.BenchPage.ReadingFields;
import org.holewise.school.handin.Draft;
import org.holewise.school.handin.DraftEntry;
import org.holewise.school.handin.EntryName;
import org.holewise.school.sheet.ExerciseSheet;

/** The entries of a draft as fields: what is kept, or what was typed and could not be. */
record EntryFields(
    Exercise exercise,
    List<DraftEntry> entries,
    Draft draft,
    Map<String, String> problems,
    List<SentEntry> kept,
    PinLabels labels) {

  EntryFields(
      Exercise exercise,
      List<DraftEntry> entries,
      Draft draft,
      List<SentEntry> kept,
      PinLabels labels) {
    this(exercise, entries, draft, draft.problems(), kept, labels);
  }

  /** A spare link has this in its id, so that an empty row is always there. */
  private static final String SPARE = "n";

  private static final Map<Class<? extends Measure>, List<String>> WORDS =
      Map.of(
          Measure.Seen.class, List.of("lit", "dim", "dark", "flickering"),
          Measure.Joined.class, List.of("yes", "no"),
          Measure.Level.class, List.of("H", "L"));

  List<PartFields> parts() {
    return exercise.parts().stream().map(this::part).toList();
  }

  /** Every link that is there, then an empty row. */
  List<Fields> links(String key) {
    var links = new ArrayList<>(made(EntryName.Kind.LINK));
    String id = SPARE + key.replace("-", "").substring(0, 16);
    links.add(fields(new EntryName(EntryName.Kind.LINK, id), ""));
    return links;
  }

  /** A row that the page's script makes others of. */
  Fields unnamed(EntryName.Kind kind) {
    return fields(new EntryName(kind, "new"), "");
  }

  List<Fields> extras() {
    return made(EntryName.Kind.EXTRA);
  }

  List<ReadingFields> readings() {
    var rows = ExerciseSheet.of(exercise).readings();
    var texts = new Texts(Messages.english(), exercise, draft.record().build(), false);
    var readings = new ArrayList<ReadingFields>();
    for (int i = 0; i < rows.size(); i++) {
      Reading reading = exercise.readings().get(i);
      var row = rows.get(i);
      readings.add(
          new ReadingFields(
              row.id(),
              row.label(),
              texts.how(reading.measure()),
              row.when(),
              unit(reading.measure()),
              WORDS.getOrDefault(reading.measure().getClass(), List.of()),
              fields(new EntryName(EntryName.Kind.READING, row.id()), row.label())));
    }
    return readings;
  }

  /** What must be put right, in the order of the page. */
  List<Note> summary() {
    var notes = new ArrayList<Note>();
    kept.stream().flatMap(entry -> tooLong(entry).stream()).forEach(notes::add);
    problems.forEach(
        (name, problem) ->
            EntryName.read(name, exercise)
                .ifPresent(
                    n -> notes.add(new Note(firstField(n, exercise), labels.title(n), problem))));
    return notes;
  }

  /** The field to go to for an entry. */
  static String firstField(EntryName name, Exercise exercise) {
    return switch (name.kind()) {
      case PART -> name + ":" + PinTexts.names(exercise.part(name.id()).orElseThrow()).get(0);
      case LINK -> name + ":" + SentEntry.FROM;
      case READING, EXTRA -> name.toString();
    };
  }

  private List<Note> tooLong(SentEntry entry) {
    return entry.tooLong().stream()
        .map(
            field ->
                new Note(
                    fieldName(entry.name(), field),
                    labels.title(entry.name()),
                    labels.tooLong(SentEntry.longest(entry.name(), field))))
        .toList();
  }

  private static String fieldName(EntryName name, String part) {
    return part.isEmpty() ? name.toString() : name + ":" + part;
  }

  private PartFields part(Part part) {
    var all = fields(new EntryName(EntryName.Kind.PART, part.ref()), part.ref());
    var marked = all.fields().get(all.fields().size() - 1);
    var pins = all.fields().subList(0, all.fields().size() - 1);
    boolean readable = part.kind().name().equals("resistor") || !marked.text().isEmpty();
    return new PartFields(
        part.ref(),
        part.kind().name(),
        PartValue.of(part),
        new Fields(all.name(), all.title(), all.was(), all.base(), pins, all.problem()),
        readable ? Optional.of(marked) : Optional.empty());
  }

  private List<Fields> made(EntryName.Kind kind) {
    return entries.stream()
        .filter(entry -> !entry.text().isEmpty())
        .flatMap(entry -> EntryName.read(entry.name(), exercise).stream())
        .filter(name -> name.kind() == kind)
        .map(name -> fields(name, ""))
        .toList();
  }

  private Fields fields(EntryName name, String title) {
    var stored = entries.stream().filter(e -> e.name().equals(name.toString())).findFirst();
    var sent = kept.stream().filter(e -> e.name().equals(name)).findFirst();
    String text = stored.map(DraftEntry::text).orElse("");
    String problem =
        sent.filter(entry -> !entry.tooLong().isEmpty())
            .map(entry -> tooLong(entry).get(0).text())
            .orElse(problems.getOrDefault(name.toString(), ""));
    var typed = sent.map(SentEntry::fields).orElse(Map.of());
    var views = new ArrayList<FieldView>();
    SentEntry.fields(name, text, exercise)
        .forEach(
            (part, was) -> views.add(field(name, part, typed.getOrDefault(part, was), problem)));
    return new Fields(
        name.toString(),
        title,
        sent.map(SentEntry::was).orElse(text),
        sent.map(SentEntry::base).orElse(stored.map(DraftEntry::revision).orElse(0L)),
        views,
        problem);
  }

  private FieldView field(EntryName name, String part, String text, String problem) {
    boolean hole = !part.isEmpty() && !part.equals(SentEntry.MARKED);
    boolean wrong = !problem.isEmpty() && (!hole || (!text.isEmpty() && Hole.read(text).isEmpty()));
    return new FieldView(
        fieldName(name, part),
        part,
        name.kind() == EntryName.Kind.PART && hole
            ? labels.of(exercise.part(name.id()).orElseThrow(), part)
            : "",
        text,
        SentEntry.longest(name, part),
        wrong && !part.equals(SentEntry.MARKED));
  }

  private static String unit(Measure measure) {
    return measure instanceof Measure.Amps ? "mA" : measure.unit().map(Unit::symbol).orElse("");
  }
}
