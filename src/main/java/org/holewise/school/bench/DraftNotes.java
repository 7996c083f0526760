package org.holewise.school.bench;

import java.util.List;
import org.holewise.engine.exercise.Exercise;
import org.holewise.school.bench.BenchPage.Note;
import org.holewise.school.handin.Draft;
import org.holewise.school.sheet.TypedBuild;

/** What is odd about a draft, each with the field to look at. */
final class DraftNotes {

  private DraftNotes() {}

  static List<Note> of(Draft draft, Exercise exercise, PinLabels labels) {
    return TypedBuild.read(draft.lines(), exercise).odd().stream()
        .map(
            odd ->
                draft
                    .nameOf(odd.line())
                    .map(
                        name ->
                            new Note(
                                EntryFields.firstField(name, exercise),
                                labels.title(name),
                                odd.text()))
                    .orElse(new Note("", "", odd.text())))
        .toList();
  }
}
